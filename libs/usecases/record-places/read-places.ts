import type { RecordPlaces } from '../../contracts';
import { formatDay } from '../../day';
import { done, refused, type Outcome } from '../outcome';
import type { NewPlaceRecord, PartRow, PositionRow, Tables } from '../ports/index';
import { readPartTexts, type PartTextReading } from '../read-part-text/read-part-text';
import type { WholeTicket } from '../view-ticket/index';
import { candidatesByMarks, fastenersOfLine } from './candidates-by-marks';
import { checkPlace, namedTwice, type PlaceInput } from './check-place';

/** One record ready to be kept, with what it is called in the history. */
export interface ReadPlace {
  readonly record: NewPlaceRecord;
  readonly position: PositionRow;
  readonly words: string;
}

interface Known {
  readonly texts: ReadonlyMap<string, Outcome<PartTextReading>>;
  readonly fasteners: readonly PartRow[];
}

/** Turns what was typed, scanned or seen into records; the first place that makes no sense refuses them all. */
export async function readPlaces(
  tx: Tables,
  whole: WholeTicket,
  { side, places }: RecordPlaces,
): Promise<Outcome<readonly ReadPlace[]>> {
  const twice = namedTwice(places);
  if (twice) return bad('places', `${twice.position}, place ${twice.place} is named twice.`);
  const known = await lookUp(tx, whole, places);
  const read: ReadPlace[] = [];
  for (const input of places) {
    const position = checkPlace(whole, input);
    if (!position.ok) return position;
    const one = readPlace(whole, side, input, position.value, known);
    if (!one.ok) return one;
    read.push(one.value);
  }
  return done(read);
}

/** Everything the places need, looked up together rather than place by place. */
async function lookUp(tx: Tables, whole: WholeTicket, places: readonly PlaceInput[]): Promise<Known> {
  const texts = places.flatMap(({ partText }) => (partText ? [partText] : []));
  const needMarks = places.some(({ marks, pickedCandidate }) => marks !== null || pickedCandidate !== null);
  return {
    texts: await readPartTexts(tx, texts, whole.unit.maker?.code ?? null),
    fasteners: needMarks ? await fastenersOfLine(tx, whole) : [],
  };
}

function readPlace(
  whole: WholeTicket,
  side: 'found' | 'left',
  input: PlaceInput,
  position: PositionRow,
  known: Known,
): Outcome<ReadPlace> {
  const told = tellPart(input, known);
  if (!told.ok) return told;
  const { part, pack, candidates } = told.value;
  const record: NewPlaceRecord = {
    positionId: position.id,
    place: input.place,
    side,
    partId: part?.id ?? null,
    partText: input.partText || null,
    pack,
    marks: input.marks,
    candidates: candidates.map(({ id }) => id),
    condition: input.condition,
    fittedOn: side === 'left' ? formatDay(whole.today) : input.fittedOn,
    leftOutWhy: input.leftOutWhy || null,
  };
  return done({ record, position, words: wordsOf(input, part, candidates) });
}

interface ToldPart {
  readonly part: PartRow | null;
  readonly pack: number | null;
  readonly candidates: readonly PartRow[];
}

/** By its number; else the candidate a person picked; else every part the marks leave possible. */
function tellPart({ partText, marks, pickedCandidate }: PlaceInput, { texts, fasteners }: Known): Outcome<ToldPart> {
  if (partText) {
    const read = texts.get(partText)!;
    return read.ok ? done({ part: read.value.part, pack: read.value.pack, candidates: [] }) : read;
  }
  const candidates = marks === null ? done<readonly PartRow[]>([]) : candidatesByMarks(marks, fasteners);
  if (!candidates.ok) return candidates;
  if (pickedCandidate === null) return done({ part: null, pack: null, candidates: candidates.value });
  const choices = marks === null ? fasteners : candidates.value;
  const part = choices.find(({ key }) => key === pickedCandidate);
  if (!part) return bad('pickedCandidate', `${pickedCandidate} is not among the parts it can be.`);
  return done({ part, pack: null, candidates: candidates.value });
}

function wordsOf({ condition, leftOutWhy }: PlaceInput, part: PartRow | null, candidates: readonly PartRow[]): string {
  if (leftOutWhy) return `left out (${leftOutWhy})`;
  const what = part?.number ?? (candidates.length > 0 ? candidates.map(({ number }) => number).join(' or ') : null);
  return [what, condition].filter((word) => word !== null).join(', ') || 'not told by its marks';
}

const bad = (field: string, detail: string) => refused('bad-input', detail, { field });
