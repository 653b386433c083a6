import type { Judgement } from '../../fit-rules';

/** That the parts it can be all get one verdict, so that none need be told from another; null where that is not so. */
export function sayNeedless({ candidates, verdict }: Pick<Judgement, 'candidates' | 'verdict'>): string | null {
  const alike = candidates.every((one) => one.verdict === verdict);
  if (candidates.length < 2 || !alike) return null;
  return `All ${candidates.length} get the same verdict here, ${verdict}: there is no need to tell them apart.`;
}
