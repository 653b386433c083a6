import type { IntakeDraft, OpenTicket, UnitIdentity } from '../../../../../libs/contracts';

export const EMPTY_UNIT: UnitIdentity = {
  lineCode: null,
  modelNumber: null,
  serial: null,
  serialAbsent: null,
  options: {},
  plate: '',
};

export const EMPTY_INTAKE: IntakeDraft = {
  ownerId: null,
  ownerName: '',
  owner: { name: '', phone: '', email: '', address: '', consent: false },
  unitId: null,
  unitName: '',
  unit: EMPTY_UNIT,
  complaint: '',
  benchId: null,
  promisedOn: null,
};

/** What the intake still needs, in a sentence; null when a ticket can be opened. */
export function stillNeeded(draft: IntakeDraft): string | null {
  if (draft.ownerId === null && draft.owner.name.trim() === '') return 'Say whose unit it is.';
  return null;
}

/** The ticket as it goes over the wire: owner and unit each by number or as new. */
export function ticketFrom(draft: IntakeDraft): OpenTicket {
  return {
    ...(draft.ownerId === null ? { owner: draft.owner } : { ownerId: draft.ownerId }),
    ...(draft.unitId === null ? { unit: draft.unit } : { unitId: draft.unitId }),
    complaint: draft.complaint,
    benchId: draft.benchId,
    promisedOn: draft.promisedOn,
  };
}
