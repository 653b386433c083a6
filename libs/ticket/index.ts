/**
 * The ticket's way through the shop: its stages, what each gate asks, and what may follow what.
 *
 *   missingFor(facts)            per stage, what its gate still asks for
 *   mayMove(facts, to, reason)   null, or why not
 *   mayHold / mayResume / mayCancel / mayWork
 */
export * from './stages';
export * from './ticket-facts';
export * from './safety-points';
export * from './positions-to-work-on';
export * from './gates';
export * from './missing-for';
export * from './may-move';
export * from './settle-picks';
export * from './estimate/sums';
export * from './estimate/estimate-lines';
export * from './warranty';
