import type { StandingNote } from '../ports/install-store';
import { isLate, placesOf, standingAt, type Circumstances } from './circumstances';
import type { Closing, NoteAdd } from './consequence-plan';
import type { JudgedInstall } from './judge-install';

/**
 * Notes that greet a unit at its next intake, for rules that ask for no more; and notes that lost their ground. One that a
 * person settled stays so while the part it speaks of stays in its place.
 */
export function planNotes(
  judged: readonly JudgedInstall[],
  standing: ReadonlyMap<string, readonly StandingNote[]>,
  about: Circumstances,
): { notes: readonly NoteAdd[]; notesClosed: readonly Closing[] } {
  const notes: NoteAdd[] = [];
  const notesClosed: Closing[] = [];
  for (const one of judged) {
    const all = standingAt(standing, one.install);
    const wanted = notesFor(one);
    if (all.length === 0 && wanted.length === 0) continue;
    const open = all.filter((note) => note.open);
    const settled = all.filter(({ settledAbout }) => settledAbout === one.install.partId);
    if (one.install.unit.openTicketId === null) {
      notes.push(...wanted.filter((add) => ![...open, ...settled].some((note) => note.source === add.source)));
    }
    const ended = open.filter((note) => !wanted.some((add) => add.source === note.source));
    notesClosed.push(...ended.map(({ id }) => ({ id, why: about.because })));
  }
  if (about.wholeUnits) {
    const seen = placesOf(judged);
    const gone = [...standing]
      .filter(([key]) => !seen.has(key))
      .flatMap(([, rows]) => rows.filter((note) => note.open));
    notesClosed.push(...gone.map(({ id }) => ({ id, why: 'The part was taken out.' })));
  }
  return { notes, notesClosed };
}

function notesFor({ install, verdict, record }: JudgedInstall): readonly NoteAdd[] {
  if (record === null || !isLate(verdict) || record.action !== 'next-service') return [];
  const { unit, positionId, place } = install;
  const bySource = new Map<string, NoteAdd>();
  for (const { key: rule, source, action } of record.rules) {
    if (action !== 'next-service') continue;
    const detail = { rule, required: record.required, sentence: record.technician };
    bySource.set(source, { unitId: unit.id, positionId, place, source, detail });
  }
  return [...bySource.values()];
}
