import type { RecordPlaces } from '../../contracts';
import { formatDay } from '../../day';
import { done, refused, type Outcome } from '../outcome';
import type { NewPlaceRecord, PartRow, PlaceRecordRow, PositionRow, Tables } from '../ports/index';
import { readPartTexts, type PartTextReading } from '../read-part-text/read-part-text';
import { recordAt, type WholeTicket } from '../view-ticket/index';
import { fastenersOfLine, lookAtMarks } from './look-at-marks';
import { pickCandidate } from './pick-candidate';
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
  const standing = recordAt(whole, position.id, input.place, side);
  const tellable = tellPart(input, known, standing);
  if (!tellable.ok) return tellable;
  const { part, pack, candidates, told } = tellable.value;
  const record: NewPlaceRecord = {
    positionId: position.id,
    place: input.place,
    side,
    partId: part?.id ?? null,
    partText: input.partText || null,
    pack,
    marks: input.marks,
    candidates: candidates.map(({ id }) => id),
    told,
    condition: input.condition,
    fittedOn: side === 'left' ? formatDay(whole.today) : input.fittedOn,
    leftOutWhy: input.leftOutWhy || null,
  };
  return done({ record, position, words: wordsOf(input, tellable.value) });
}

interface ToldPart {
  readonly part: PartRow | null;
  readonly pack: number | null;
  readonly candidates: readonly PartRow[];
  readonly told: string | null;
}

/** By its number; else the candidate a person picked; else every part the marks leave possible. */
function tellPart(
  { partText, marks, pickedCandidate, toldBy }: PlaceInput,
  { texts, fasteners }: Known,
  standing: PlaceRecordRow | null,
): Outcome<ToldPart> {
  const unknown = { part: null, pack: null, candidates: [], told: null };
  if (partText) {
    const read = texts.get(partText)!;
    return read.ok ? done({ ...unknown, part: read.value.part, pack: read.value.pack }) : read;
  }
  const said = marks === null ? done(null) : lookAtMarks(marks, fasteners);
  if (!said.ok) return said;
  const candidates = said.value?.candidates.map(({ part }) => part) ?? [];
  if (pickedCandidate === null) return done({ ...unknown, candidates });
  const choices = marks === null ? fasteners : candidates;
  const picked = pickCandidate({ pickedCandidate, toldBy }, said.value, choices, standing);
  return picked.ok ? done({ ...unknown, ...picked.value, candidates }) : picked;
}

function wordsOf({ condition, leftOutWhy }: PlaceInput, { part, candidates, told }: ToldPart): string {
  if (leftOutWhy) return `left out (${leftOutWhy})`;
  const what = part?.number ?? (candidates.length > 0 ? candidates.map(({ number }) => number).join(' or ') : null);
  const how = told === null ? '' : ` (${told.replace(/\.$/, '')})`;
  return [what, condition].filter((word) => word !== null).join(', ') + how || 'not told by its marks';
}

const bad = (field: string, detail: string) => refused('bad-input', detail, { field });
