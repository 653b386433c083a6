export { loadRulebook, makeRulebook, type LoadedRulebook } from './load-rulebook';
export { applyDraft, type DraftChanges, type DraftResult } from './apply-draft';
export { changesBy, recheckScopeOf } from './scope-of-changes';
