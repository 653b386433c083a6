import type { PlaceExplanation } from '../../contracts';
import { explain, recordQuestion, sayVerdict, type Judgement, type RuleRef } from '../../fit-rules';
import type { Actor } from '../actor';
import { judgeAgain, keptQuestion } from '../judge-installs';
import { done, refused, type Outcome } from '../outcome';
import type { HeldInstall, PlaceRecordRow, Tables } from '../ports/index';
import { namingOf, partKeysOf, partRefOf, rulingView } from '../rule-on-unit/index';
import type { Ports } from '../run';
import { ruleView } from '../view-bulletin/rule-view';
import { judgeRecord, loadTicket, noSuchTicket, type WholeTicket } from '../view-ticket/index';

/** Which place of which ticket; the newer side when none is named. */
export interface PlaceAsked {
  readonly id: number;
  readonly position: string;
  readonly place: number;
  readonly side?: 'found' | 'left' | undefined;
}

/**
 * The whole chain behind the verdict of a place, judged by the papers of today, as text and as data; and, where this
 * ticket's record is what the unit holds, the verdict that was kept, judged again from what was kept with it.
 */
export async function explainPlace(
  { store, clock }: Ports,
  actor: Actor,
  asked: PlaceAsked,
): Promise<Outcome<PlaceExplanation>> {
  const whole = await loadTicket(store, clock, asked.id, actor.locationId);
  if (!whole) return noSuchTicket(asked.id);
  const record = recordAsked(whole, asked);
  const judgement = record && judgeRecord(whole, record);
  if (!record || !judgement) {
    const where = `place ${asked.place} of position '${asked.position}' on ticket ${asked.id}`;
    return refused('not-found', `There is no verdict for ${where}: nothing is recorded there that can be judged.`);
  }
  const held = await heldThere(store, whole, record);
  return done({
    side: record.side,
    verdict: judgement.verdict,
    ...(await chainOf(store, whole, judgement)),
    kept: held && keptOf(held, whole),
  });
}

function recordAsked({ positionList, records }: WholeTicket, asked: PlaceAsked): PlaceRecordRow | null {
  const position = positionList.find(({ code }) => code === asked.position);
  const there = records.filter((one) => one.positionId === position?.id && one.place === asked.place);
  const sides = asked.side === undefined ? (['left', 'found'] as const) : [asked.side];
  for (const side of sides) for (const one of there) if (one.side === side) return one;
  return null;
}

/** What the unit holds there, when it is this record: the part left, or the part found while none was left. */
async function heldThere(tables: Tables, { unit, ticket, records }: WholeTicket, record: PlaceRecordRow) {
  const { positionId, place, side } = record;
  const newer = records.some((one) => one.positionId === positionId && one.place === place && one.side === 'left');
  if (side === 'found' && newer) return null;
  const held = await tables.installs.held({ unitIds: [unit.id] });
  return held.find((one) => one.positionId === positionId && one.place === place && one.ticketId === ticket.id) ?? null;
}

async function chainOf(tables: Tables, whole: WholeTicket, judgement: Judgement) {
  const { rulebook, today, now } = whole.rulebook;
  const keys = [...partKeysOf([judgement.ruling]), ...judgement.question.parts];
  const parts = await tables.catalogue.partsByKeys([...new Set(keys)]);
  const names = {
    ...whole,
    partsByKey: new Map([...whole.partsByKey, ...parts.map((part) => [part.key, part] as const)]),
  };
  const naming = namingOf(names);
  return {
    text: [...explain(judgement, rulebook, naming)],
    ruling: rulingView(judgement.ruling, names),
    rules: rulesOf(judgement).flatMap((ref) => {
      const rule = whole.rulebook.ruleOf(ref);
      return rule ? [ruleView(rule, naming)] : [];
    }),
    candidates: judgement.candidates.map(({ part, verdict, then, thenAsKnown }) => {
      return { part: partRefOf(part, names.partsByKey), verdict, then, thenAsKnown };
    }),
    record: recordQuestion(rulebook, judgement.question, { today, now }),
  };
}

/** Every rule that was looked at, each once. */
function rulesOf({ deciding, ruling }: Judgement): RuleRef[] {
  const grounds = ruling.pieces.flatMap((piece) => piece.grounds);
  const all = grounds.flatMap((one) => [
    ...one.deciding,
    ...one.overridden.map(({ rule }) => rule),
    ...one.barred.map(({ rule }) => rule),
  ]);
  return [...new Map([...deciding, ...all].map((ref) => [`${ref.key} ${ref.version}`, ref])).values()];
}

/** The kept verdict, judged again by the papers and the knowledge of then. */
function keptOf(held: HeldInstall, { rulebook }: WholeTicket): PlaceExplanation['kept'] {
  const { verdict, judgement, judgedRevision } = held;
  const asked = keptQuestion(held);
  if (verdict === null || judgement === null || asked === null || judgedRevision === null) return null;
  const again = judgeAgain(asked, rulebook.rulebook);
  return {
    judgedOn: asked.today,
    revision: judgedRevision,
    verdict,
    sentence: judgement.technician,
    sameWords: again.verdict === verdict && sayVerdict(again, rulebook.naming).technician === judgement.technician,
    text: [...explain(again, rulebook.rulebook, rulebook.naming)],
  };
}
