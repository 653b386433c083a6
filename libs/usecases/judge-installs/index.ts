export type * from './consequence-plan';
export { judgeAgain, keptQuestion } from './kept-question';
export type { KeptQuestion } from './question-record';
export type { JudgementRecord } from './judgement-record';
export { judgeInstall, recordOf, strengthOf, type JudgedInstall } from './judge-install';
export { judgeUnit, judgeUnits } from './judge-unit';
export { lookBackFrom, lookBackMonths, monthsBefore } from './look-back';
export { planConsequences } from './plan-consequences';
export { REVIEW_SOURCE } from './plan-callbacks';
