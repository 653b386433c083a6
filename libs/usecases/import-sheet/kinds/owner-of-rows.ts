import { hasValue, type CellProblem, type OwnerSheetRow } from '../../../sheets';
import type { BulkOwner, NewBulkOwner } from '../../ports/index';
import { problem, settled } from '../kind-work';

const OWNER_FIELDS = ['name', 'phone', 'email', 'address', 'consent'] as const;
/** What rows of an owner without a number can say differently; by the others they were grouped. */
const BESIDE_THE_NAME = ['email', 'address', 'consent'] as const;
/** In which columns rows of one owner must agree. */
export const toAgree = ({ ownerNumber }: OwnerSheetRow) => (ownerNumber ? OWNER_FIELDS : BESIDE_THE_NAME);

/** Why the rows cannot be those of one owner on file. */
export function ownerProblem(row: OwnerSheetRow, found: readonly BulkOwner[]): CellProblem | null {
  if (row.ownerNumber && found.length === 0)
    return problem(
      'ownerNumber',
      'not-on-file',
      `There is no owner ${row.ownerNumber} on file; leave the number out for a new one.`,
    );
  if (found.length > 1)
    return problem(
      'name',
      'conflict',
      `${found.length} owners on file are called ${row.name} with this phone; give the owner number too.`,
    );
  return null;
}

/** What earlier rows of one owner said of it. */
export type OwnerSaid = Partial<Record<(typeof OWNER_FIELDS)[number], string | boolean>>;

/** Rows of one owner must agree about it; a blank agrees with everything, and so does what nobody said before. */
export function contradictions(row: OwnerSheetRow, given: OwnerSaid, first: number): CellProblem[] {
  return toAgree(row).flatMap((field) => {
    const value = row[field];
    if (!hasValue(value) || given[field] === undefined || given[field] === value) return [];
    return [
      problem(
        field,
        'conflict',
        `An earlier row of this owner (the first is ${first}) says "${String(given[field])}"; make them agree.`,
      ),
    ];
  });
}

/** The owner as it would stand: what the rows give, else what is on file. */
export function ownerPlan(
  before: BulkOwner | null,
  group: readonly { readonly row: OwnerSheetRow }[],
  here: number,
): NewBulkOwner {
  const give = <T>(field: (typeof OWNER_FIELDS)[number]): T | null | undefined => {
    const values = group.map(({ row }) => row[field] as T | null | undefined);
    return (
      values.find((value) => value !== null && value !== undefined) ??
      (values.some((value) => value === null) ? null : undefined)
    );
  };
  return {
    locationId: before?.locationId ?? here,
    name: give<string>('name') ?? before?.name ?? '',
    phone: settled(give<string>('phone'), before?.phone, ''),
    email: settled(give<string>('email'), before?.email, ''),
    address: settled(give<string>('address'), before?.address, ''),
    consent: settled(give<boolean>('consent'), before?.consent, false),
  };
}

/** What of an owner a row can change. */
export const ownerFields = ({ name, phone, email, address, consent }: NewBulkOwner) => ({
  name,
  phone,
  email,
  address,
  consent,
});
