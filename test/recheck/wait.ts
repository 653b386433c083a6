import type { Outcome, RecheckRow, Store } from '../../libs/usecases';

/** Asks again and again until the answer is yes. The spec's own time limit ends it. */
export async function until(asked: () => Promise<boolean>): Promise<void> {
  while (!(await asked())) await new Promise((resolve) => setTimeout(resolve, 20));
}

/** The recheck once it is done. */
export async function finished(store: Store, recheckId: number): Promise<RecheckRow> {
  await until(async () => (await store.rechecks.find(recheckId))?.state === 'done');
  return (await store.rechecks.find(recheckId))!;
}

/** The value of an outcome that must not be a refusal. */
export async function value<T>(outcome: Promise<Outcome<T>>): Promise<T> {
  const answer = await outcome;
  if (!answer.ok) throw new Error(answer.refusal.detail);
  return answer.value;
}
