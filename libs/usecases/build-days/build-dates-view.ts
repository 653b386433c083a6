import {
  cutAt,
  EVIDENCE_KINDS,
  whatWouldSettle,
  type BuildDateAnswer,
  type Evidence,
  type EvidenceKind,
  type PreparedShop,
  type Settling,
} from '../../build-date';
import type { BuildDates, EvidenceView } from '../../contracts';
import { formatDay, type Day, type DaySet } from '../../day';
import type { Ruling } from '../../fit-rules';
import type { EvidenceRow } from '../ports/index';
import { settlingMemo } from './settling-memo';

export interface BuildDatesQuestion {
  readonly answer: BuildDateAnswer;
  readonly evidence: readonly Evidence[];
  /** Recorded rows, for when a piece was set aside. */
  readonly rows: readonly EvidenceRow[];
  readonly rulings: readonly Ruling[];
  readonly maker: string | null;
  readonly line: string | null;
  /** True when it is on record that there is no serial to read; nobody is sent to look for it again. */
  readonly serialAbsent: boolean;
  readonly shop: PreparedShop;
  readonly today: Day;
}

/** Kinds that nobody can go and read: they follow from the catalogue or from the shop's own books. */
const NOT_TO_READ: readonly EvidenceKind[] = ['production-span', 'first-seen'];

/** The possible build days for the page: with the evidence, what contradicts what, and what to look at next. */
export function buildDatesView(question: BuildDatesQuestion): BuildDates {
  const { answer } = question;
  const settling = settlingOf(question);
  return {
    days: spansOf(answer.days),
    sentence: answer.sentence,
    evidence: answer.pieces.map((piece) => pieceView(piece, question)),
    splits: answer.splits.map(({ sentence }) => sentence),
    conflicts: answer.conflicts.map((ids) => [...ids]),
    otherReadings: answer.misreadings.map(({ id, possible, sentence }) => ({
      id,
      kind: question.evidence.find((piece) => piece.id === id)!.kind,
      serial: possible,
      sentence,
    })),
    lookAt: settling.kinds.map(({ kind, sentence }) => ({ kind, sentence })),
    needed: settling.needed,
  };
}

/** Bounded spans as text. */
function spansOf(days: DaySet): { from: string; to: string }[] {
  return days.map(({ from, to }) => ({ from: formatDay(from), to: formatDay(to) }));
}

/** The date is needed where some position's answer changes within the possible days. */
function settlingOf(question: BuildDatesQuestion): Settling {
  const { answer, evidence, rulings, maker, line, serialAbsent, shop, today } = question;
  const boundaries = rulings.flatMap((ruling) =>
    ruling.boundaries.flatMap((boundary) => (boundary.axis === 'built' ? [boundary.at] : [])),
  );
  const read = new Set(evidence.filter((piece) => !piece.setAside).map((piece) => piece.kind));
  const notToRead: readonly EvidenceKind[] = serialAbsent ? [...NOT_TO_READ, 'serial-scheme'] : NOT_TO_READ;
  const missing = EVIDENCE_KINDS.filter((kind) => !read.has(kind) && !notToRead.includes(kind));
  const cuts = cutAt(answer.days, boundaries);
  return settlingMemo(shop, { cuts, missing, maker, line, today }, () =>
    whatWouldSettle({ cuts, missing, maker: maker ?? '', line: line ?? undefined, shop, today }),
  );
}

function pieceView(
  { id, kind, days, sentence, problem, setAside }: BuildDateAnswer['pieces'][number],
  { evidence, rows }: BuildDatesQuestion,
): EvidenceView {
  const { id: _id, kind: _kind, setAside: _aside, ...data } = evidence.find((piece) => piece.id === id)!;
  const at = rows.find((row) => String(row.id) === id)?.setAside?.at ?? null;
  return {
    id,
    kind,
    data,
    days: spansOf(days),
    sentence,
    problem: problem?.sentence ?? null,
    setAside: setAside ? { why: setAside.reason, by: setAside.by, at } : null,
  };
}
