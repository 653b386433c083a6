import type { MovementRow } from '../ports/shelf-store';

type Said = Pick<MovementRow, 'kind' | 'pieces' | 'reserved' | 'packs' | 'packSize' | 'reason' | 'ticket'>;

/** What a movement was, in one sentence. */
export function sayMovement(row: Said): string {
  const { pieces, reserved, reason, ticket } = row;
  const on = ticket ? ` for ${ticket.number}` : '';
  switch (row.kind) {
    case 'opening':
      return `Opening count: ${pieces}.`;
    case 'receive':
      return `Received ${pieces}${sayPacks(row)}${reason === '' ? '' : `: ${reason}`}.`;
    case 'count':
      return `Counted, ${sayDifference(pieces)}: ${reason}.`;
    case 'pick':
      return `Picked ${reserved}${on}.`;
    case 'return':
      return pieces > 0 ? `The owner handed back ${pieces}${on}.` : `Returned ${-reserved}${on}.`;
    case 'fit':
      return `Fitted ${-pieces}${on}.`;
    case 'take-out':
      return `Not fitted after all: ${pieces} back on the bench${on}.`;
    case 'give':
      return `Given to the owner: ${-pieces}${on}.`;
  }
}

function sayPacks({ packs, packSize }: Said): string {
  return packs === null ? '' : ` (${packs} x ${packSize})`;
}

function sayDifference(pieces: number): string {
  if (pieces === 0) return 'as many as there should be';
  return pieces > 0 ? `${pieces} more` : `${-pieces} fewer`;
}
