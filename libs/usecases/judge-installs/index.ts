export type * from './consequence-plan';
export type { JudgementRecord } from './judgement-record';
export { judgeInstall, recordOf, type JudgedInstall } from './judge-install';
export { judgeUnit } from './judge-unit';
export { lookBackFrom, monthsBefore } from './look-back';
export { planConsequences } from './plan-consequences';
export { REVIEW_SOURCE } from './plan-callbacks';
