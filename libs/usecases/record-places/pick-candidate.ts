import { done, refused, type Outcome } from '../outcome';
import type { PartRow, PlaceRecordRow } from '../ports/index';
import type { PlaceInput } from './check-place';
import type { MarksSaid } from './look-at-marks';

/** A part without a readable number, and how it was told, in a sentence. */
export interface PickedPart {
  readonly part: PartRow;
  readonly told: string;
}

const BY_FINISH = /^(?:by |from )?(?:the |its )?(?:finish|colou?r|plating|coating)\W*$/i;
const FINISH_NEVER_DECIDES = 'Makers change finishes, so the finish alone never decides.';

/**
 * The candidate a person picked. Where the marks leave that part alone they say how it was told; otherwise the person
 * has to, for a guess is no finding. A pick that stands already keeps how it was told.
 */
export function pickCandidate(
  { pickedCandidate, toldBy }: Pick<PlaceInput, 'toldBy'> & { pickedCandidate: string },
  said: MarksSaid | null,
  choices: readonly PartRow[],
  standing: PlaceRecordRow | null,
): Outcome<PickedPart> {
  const part = choices.find(({ key }) => key === pickedCandidate);
  if (!part) return bad('pickedCandidate', `${pickedCandidate} is not among the parts it can be.`);
  const looks = said?.candidates.find((one) => one.part.key === part.key)?.sentence ?? '';
  const how = (toldBy ?? '').trim();
  if (how === '' && said?.told?.key === part.key) return done({ part, told: `Told by its marks: ${looks}` });
  if (how === '' && standing?.partId === part.id && standing.told !== null) return done({ part, told: standing.told });
  if (BY_FINISH.test(how)) return bad('toldBy', `${FINISH_NEVER_DECIDES} Say what else told it.`);
  if (how === '') return bad('toldBy', askHow(part, said));
  return done({ part, told: sayPicked(part, how, said, looks) });
}

function askHow({ number }: PartRow, said: MarksSaid | null): string {
  const why = said?.finishAlone ? FINISH_NEVER_DECIDES : 'The marks do not settle which part it is.';
  const others = said?.tellApart[0] ?? '';
  return [why, others, `To keep it as ${number}, say how it was told, such as the bag it came in.`]
    .filter((words) => words !== '')
    .join(' ');
}

function sayPicked({ number }: PartRow, how: string, said: MarksSaid | null, looks: string): string {
  const others = (said?.candidates ?? []).filter((one) => one.part.number !== number).map((one) => one.part.number);
  const beside = others.length === 0 ? '' : ` by its marks it could also be ${others.join(' or ')};`;
  return `Picked by a person:${beside} told by ${how}. ${looks}`.trim();
}

const bad = (field: string, detail: string) => refused('bad-input', detail, { field });
