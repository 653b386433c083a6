import { EvidenceSchema, type Evidence } from '../../build-date';
import type { LookUpAnswer, LookUpRequest } from '../../contracts';
import { day, formatDay } from '../../day';
import type { UnitFacts } from '../../fit-rules';
import { ResidentCatalogue, toPosition } from '../browse-catalogue/index';
import { impliedEvidence } from '../../build-date';
import { buildDatesView, datedUnit, inferUnit } from '../build-days/index';
import { done, refused, type Outcome } from '../outcome';
import type { LineRow, PositionRow } from '../ports/index';
import { partKeysOf, rulingView } from '../rule-on-unit/index';
import { rulebookAt, thresholdOf } from '../rulebook';
import type { Ports } from '../run';
import { readShape } from '../../shape';

/**
 * A walk-in without a ticket: from line, model, serial and evidence the possible build days, and per position asked
 * about what goes there. Nothing is kept in the store. One short question to it tells whether what answers are made of is still what
 * was read before; then a question that was asked before on the same day has the same answer.
 */
export async function lookUp({ store, clock }: Ports, request: LookUpRequest): Promise<Outcome<LookUpAnswer>> {
  const mark = await store.catalogue.mark();
  const catalogue = ResidentCatalogue.at(store, mark);
  const today = clock.today();
  const question = JSON.stringify([mark.rulebook.stamp, mark.threshold, today, request]);
  const known = catalogue.answerTo(question);
  if (known) return done(known);
  const line = await catalogue.line(request.lineCode);
  if (!line) return bad('lineCode', `There is no product line '${request.lineCode}'.`);
  const { modelNumber } = request;
  if (modelNumber !== null && !line.models.some(({ number }) => number === modelNumber)) {
    return bad('modelNumber', `${line.name} has no model '${modelNumber}'.`);
  }
  const about = { serial: request.serial || null, line, maker: line.maker };
  const evidence = readEvidenceOf(request, line);
  if (!evidence.ok) return evidence;
  const [ofLine, shop, rulebook] = await Promise.all([
    catalogue.positionsOf(line),
    catalogue.shop(),
    rulebookAt(store, mark.rulebook, today, thresholdOf(mark.threshold)),
  ]);
  const asked = askedPositions(request, line, ofLine);
  if (!asked.ok) return asked;
  const positions = asked.value;
  const all = [...impliedEvidence(datedUnit(about)), ...evidence.value];
  const inferred = inferUnit(about, all, shop, today);
  const facts = factsOf(request, inferred.columns);
  const inForceOn = request.inForceOn === undefined ? today : day(request.inForceOn);
  const rulings = positions.map(({ code }) => rulebook.judge.ruling(facts, code, { inForceOn }));
  const names = {
    partsByKey: await catalogue.parts(partKeysOf(rulings)),
    positions: new Map(positions.map((position) => [position.code, position])),
    rulebook,
  };
  const { maker, code: lineCode } = line;
  const answer: LookUpAnswer = {
    line: { code: lineCode, name: line.name, maker: maker.name },
    model: modelNumber,
    inForceOn: formatDay(inForceOn),
    revision: rulebook.revision,
    buildDates: buildDatesView({
      answer: inferred.answer,
      evidence: all,
      rows: [],
      rulings,
      maker: maker.code,
      line: lineCode,
      serialAbsent: false,
      shop,
      today,
    }),
    positions: positions.map(toPosition),
    rulings: rulings.map((ruling) => rulingView(ruling, names)),
  };
  return done(catalogue.keep(question, answer));
}

/** In the order of the line, however they were asked for. */
function askedPositions(
  { positions: asked }: LookUpRequest,
  { name }: LineRow,
  ofLine: readonly PositionRow[],
): Outcome<readonly PositionRow[]> {
  if (asked === undefined) return done(ofLine);
  const unknown = asked.find((code) => !ofLine.some((position) => position.code === code));
  if (unknown === undefined) return done(ofLine.filter(({ code }) => asked.includes(code)));
  const known = ofLine.map(({ code }) => code).join(', ') || 'none yet';
  return bad('positions', `${name} has no position '${unknown}'; its positions are ${known}.`);
}

function readEvidenceOf({ evidence }: LookUpRequest, line: LineRow): Outcome<Evidence[]> {
  const read: Evidence[] = [];
  for (const [i, piece] of evidence.entries()) {
    const named = piece.kind === 'serial-scheme' ? { ...piece, maker: line.maker.code, line: line.code } : piece;
    const result = readShape(EvidenceSchema, { ...named, id: `given-${i + 1}`, setAside: undefined });
    if (!result.ok) {
      const [{ path, words }] = result.problems;
      const field = ['evidence', i, ...path].join('.');
      return bad(field, `${field}: ${words}.`);
    }
    read.push(result.value);
  }
  return done(read);
}

function factsOf(
  { lineCode, modelNumber, options }: LookUpRequest,
  {
    built,
    serialScheme,
    serialKey,
  }: { built: UnitFacts['built']; serialScheme: string | null; serialKey: string | null },
): UnitFacts {
  const serial = serialScheme === null ? null : { scheme: serialScheme, key: serialKey };
  return { line: lineCode, model: modelNumber, options, serial, built };
}

const bad = (field: string, detail: string) => refused('bad-input', detail, { field });
