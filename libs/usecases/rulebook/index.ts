export { loadRulebook, makeRulebook, type LoadedRulebook } from './load-rulebook';
export { Strengths } from './strengths';
export { applyDraft, type DraftChanges, type DraftResult } from './apply-draft';
export { changesBy, recheckScopeOf } from './scope-of-changes';
