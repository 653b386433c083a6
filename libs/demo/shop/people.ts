import { USUAL_PRINTS } from '../../contracts';
/** Where the demo shop works. */
export const locations = [
  { code: 'MILL', name: 'Millrace Lane' },
  { code: 'QUAY', name: 'Old Quay Yard' },
] as const;
export type LocationCode = (typeof locations)[number]['code'];

export interface DemoBench {
  readonly location: LocationCode;
  readonly code: string;
  readonly name: string;
  /** How many minutes of work a day there takes. */
  readonly dayMinutes: number;
}
export const benches: readonly DemoBench[] = [
  { location: 'MILL', code: 'M1', name: 'Snow and drive lines', dayMinutes: 840 },
  { location: 'MILL', code: 'M2', name: 'Tillers', dayMinutes: 420 },
  { location: 'MILL', code: 'M3', name: 'Hydraulics', dayMinutes: 300 },
  { location: 'QUAY', code: 'Q1', name: 'Chippers', dayMinutes: 420 },
  { location: 'QUAY', code: 'Q2', name: 'Cutters and towed', dayMinutes: 420 },
];

export interface DemoPerson {
  readonly login: string;
  readonly name: string;
  readonly role: 'technician' | 'counter' | 'manager' | 'administrator';
  readonly location: LocationCode;
  /** The bench they work at. */
  readonly bench: string | null;
  /** In the open on purpose: these people exist only in the demo. */
  readonly password: string;
}

const PASSWORD = 'oil-and-rags';

export const people: readonly DemoPerson[] = [
  { login: 'imke', name: 'Imke Halvorsen', role: 'technician', location: 'MILL', bench: 'M1', password: PASSWORD },
  { login: 'teo', name: 'Teo Marchetti', role: 'technician', location: 'MILL', bench: 'M2', password: PASSWORD },
  { login: 'adaeze', name: 'Adaeze Nwosu', role: 'technician', location: 'QUAY', bench: 'Q1', password: PASSWORD },
  { login: 'jun', name: 'Jun Takeda', role: 'technician', location: 'QUAY', bench: 'Q2', password: PASSWORD },
  { login: 'rosa', name: 'Rosa Quintero', role: 'counter', location: 'MILL', bench: null, password: PASSWORD },
  { login: 'bram', name: 'Bram Oostveen', role: 'manager', location: 'MILL', bench: null, password: PASSWORD },
  { login: 'leila', name: 'Leila Farahani', role: 'administrator', location: 'MILL', bench: null, password: PASSWORD },
];

/** What the shop has settled for itself. */
export const settings = {
  currency: 'EUR',
  money: { tax: { name: 'VAT', basisPoints: 2_100, included: true }, hourMinor: 6_400 },
  lookBackMonths: 36,
  prints: {
    ...USUAL_PRINTS,
    shopName: 'Millrace Small Engine Repairs',
    address: '3 Millrace Lane, Ottermouth',
    phone: '0000 100 2000',
    email: 'counter@millrace.example',
  },
};
