import type { BuildDates } from '../../../../libs/contracts';
import { evidenceWords } from '../lib/evidence-words';
import { Said } from './said';
import classes from './conflicts.module.css';

/** Every smallest set of pieces that cannot all be true, each piece by its name and what it says. */
export function Conflicts({ buildDates: { conflicts, evidence } }: { buildDates: BuildDates }) {
  if (conflicts.length === 0) return null;
  const pieces = (ids: readonly string[]) => evidence.filter(({ id }) => ids.includes(id));
  return (
    <div className={classes.conflict}>
      <h3>These cannot all be true</h3>
      {conflicts.map((ids) => (
        <ul key={ids.join()}>
          {pieces(ids).map(({ id, kind, sentence }) => (
            <li key={id}>
              <strong>{evidenceWords(kind)}:</strong> <Said>{sentence}</Said>
            </li>
          ))}
        </ul>
      ))}
      <p>Read the plate again, or set a piece aside with a reason.</p>
    </div>
  );
}
