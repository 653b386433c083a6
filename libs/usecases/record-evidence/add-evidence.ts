import { EvidenceSchema, inferBuildDates, MOST_PIECES, readEvidence, type Evidence } from '../../build-date';
import type { NewEvidence, UnitView } from '../../contracts';
import type { Actor } from '../actor';
import { changeUnit, type OnUnit } from '../identify-unit/index';
import { done, refused, type Outcome } from '../outcome';
import type { Ports } from '../run';
import type { WholeUnit } from '../view-unit/index';
import { readShape } from '../../shape';

/**
 * Adds one piece of evidence of the build day. A piece that says nothing (a code that fits no form) is refused with
 * its own sentence: nobody should believe it counts.
 */
export function addEvidence(
  ports: Ports,
  actor: Actor,
  { evidence, ...on }: OnUnit & NewEvidence,
): Promise<Outcome<UnitView>> {
  return changeUnit(ports, actor, on, async (whole, tx) => {
    const {
      id: _id,
      setAside: _aside,
      ...data
    } = evidence as NewEvidence['evidence'] & { id?: unknown; setAside?: unknown };
    const named = data.kind === 'serial-scheme' ? { ...data, ...makerOf(whole.unit) } : data;
    const read = readShape(EvidenceSchema, { ...named, id: 'new' });
    if (!read.ok) {
      const [{ path, words }] = read.problems;
      return refused('bad-input', `evidence.${path.join('.')}: ${words}.`, { field: path.join('.') });
    }
    if (whole.evidence.length >= MOST_PIECES) {
      return refused('conflict', `A unit keeps at most ${MOST_PIECES} pieces of evidence; set one aside first.`);
    }
    const problem = readEvidence(read.value, whole.shop, whole.today).problem;
    if (problem) {
      const detail = [problem.sentence, ...otherReadings(whole, read.value)].join(' ');
      return refused('bad-input', detail, { field: 'evidence' });
    }
    const { kind, id: _new, ...kept } = read.value;
    await tx.units.insertEvidence(whole.unit.id, kind, kept, actor.id);
    return done({ kind: 'evidence', data: { kind }, personId: actor.id });
  });
}

/** What a number that cannot be read could be, with characters that hands confuse put right. */
function otherReadings({ evidence, shop, today }: WholeUnit, piece: Evidence): string[] {
  const { misreadings } = inferBuildDates([...evidence, piece], shop, today);
  return misreadings.filter(({ id }) => id === piece.id).map(({ sentence }) => sentence);
}

/** A serial is read by the schemes of the unit's own maker and line. */
function makerOf({ maker, line }: { maker: { code: string } | null; line: { code: string } | null }) {
  return maker && line ? { maker: maker.code, line: line.code } : {};
}
