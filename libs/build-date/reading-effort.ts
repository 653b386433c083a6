import type { EvidenceKind } from './evidence';

/** Effort of reading each kind, from a glance at the plate to taking the machine apart (common practice, no source). */
export const READING_EFFORT: Readonly<Record<EvidenceKind, number>> = {
  'printed-date': 1,
  'serial-scheme': 1,
  'standard-edition': 2,
  'first-seen': 2,
  vin: 3,
  receipt: 4,
  'tyre-code': 5,
  'engine-family': 6,
  'production-span': 7,
  'part-stamp': 9,
};

/** Where each kind is found, as an instruction. */
export const WHERE_TO_LOOK: Readonly<Record<EvidenceKind, string>> = {
  'printed-date': 'Read the build date on the data plate',
  'serial-scheme': 'Read the serial number on the data plate',
  'standard-edition': 'Read the standard and its edition year on the safety label',
  'first-seen': "Look up the unit's first ticket",
  vin: 'Read the 17-character vehicle number on the frame',
  receipt: 'Ask the owner for the receipt',
  'tyre-code': 'Read the last digits of the identification code on the tyre',
  'engine-family': 'Read the engine family on the emission label of the engine',
  'production-span': "Look up the model's production dates in the maker's papers",
  'part-stamp': 'Look for a date stamp on a part that was never replaced',
};
