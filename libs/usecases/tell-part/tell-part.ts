import type { TellAnswer, TellRequest } from '../../contracts';
import { day } from '../../day';
import type { Judgement } from '../../fit-rules';
import type { Actor } from '../actor';
import { done, refused, type Outcome } from '../outcome';
import type { PartRow } from '../ports/index';
import { fastenersOfLine, lookAtMarks, type MarksSaid } from '../record-places/look-at-marks';
import type { Ports } from '../run';
import { loadTicket, noSuchTicket, sayNeedless, type WholeTicket } from '../view-ticket/index';

/**
 * What a part without a readable number can be by its marks, with the verdict each candidate would get in that
 * position. Nothing is kept: it answers while the marks are still being looked at.
 */
export async function tellPart(
  { store, clock }: Ports,
  actor: Actor,
  { id, position, marks, fittedOn }: TellRequest & { readonly id: number },
): Promise<Outcome<TellAnswer>> {
  const whole = await loadTicket(store, clock, id, actor.locationId);
  if (!whole) return noSuchTicket(id);
  if (!whole.positions.has(position)) {
    return refused('bad-input', `The unit has no position '${position}'.`, { field: 'position' });
  }
  const said = lookAtMarks(marks, await fastenersOfLine(store, whole));
  if (!said.ok) return said;
  return done(answerOf(said.value, judgeAll(whole, position, fittedOn, said.value)));
}

function judgeAll(
  { facts, rulebook }: WholeTicket,
  position: string,
  fittedOn: string | null,
  { candidates }: MarksSaid,
): Judgement | null {
  if (!facts || candidates.length === 0) return null;
  const parts = candidates.map(({ part }) => part.key);
  return rulebook.judge.judge({ unit: facts, position, parts, fittedOn: fittedOn === null ? null : day(fittedOn) });
}

function answerOf(said: MarksSaid, judgement: Judgement | null): TellAnswer {
  const verdicts = new Map(judgement?.candidates.map(({ part, verdict }) => [part, verdict]));
  return {
    candidates: said.candidates.map(({ part, agrees, differs, sentence }) => ({
      part: refOf(part),
      verdict: verdicts.get(part.key) ?? null,
      agrees: [...agrees],
      differs: [...differs],
      sentence,
      asksHow: said.told?.key !== part.key,
    })),
    ruledOut: said.ruledOut.map(({ part, sentence }) => ({ part: refOf(part), sentence })),
    tellApart: [...said.tellApart],
    told: said.told?.key ?? null,
    finishAlone: said.finishAlone,
    joint: judgement?.verdict ?? null,
    needless: judgement && sayNeedless(judgement),
    sentences: [...said.sentences],
  };
}

const refOf = ({ key, number, name }: PartRow) => ({ key, number, name });
