export {
  loadRulebook,
  makeRulebook,
  rulebookAt,
  strengthThreshold,
  thresholdOf,
  type LoadedRulebook,
} from './load-rulebook';
export { Strengths } from './strengths';
export { catalogueNames } from './catalogue-names';
export { applyDraft, dayOfChanges, type DraftChanges, type DraftResult } from './apply-draft';
export { changesBy, recheckScopeOf } from './scope-of-changes';
