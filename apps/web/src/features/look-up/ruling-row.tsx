import type { LookUpAnswer } from '../../../../../libs/contracts';
import { PartNumber } from '../../components/part-number';
import { RulingWhy } from '../../components/ruling-why';
import { rulingWords } from '../../lib/ruling-words';
import { Said } from '../../components/said';
import classes from './look-up.module.css';

interface RulingRowProps {
  position: LookUpAnswer['positions'][number];
  ruling: LookUpAnswer['rulings'][number] | null;
}

/** One position: the part in large figures where it is settled, and the why behind it. */
export function RulingRow({ position, ruling }: RulingRowProps) {
  const required = ruling?.settled ? (ruling.pieces[0]?.required ?? null) : null;
  return (
    <li className={classes.row}>
      <div className={classes.where}>
        <h3>{position.name}</h3>
        <span className="soft">{position.assembly}</span>
      </div>
      <div>
        {required ? (
          <p className={classes.part}>
            <PartNumber number={required.number} name={required.name} />
          </p>
        ) : null}
        {ruling ? (
          <details open={!ruling.settled && ruling.pieces.length > 1}>
            <summary>
              <span>
                <Said>{rulingWords(ruling)}</Said>
              </span>
            </summary>
            <RulingWhy ruling={ruling} />
          </details>
        ) : (
          <p className="soft">No paper says anything here.</p>
        )}
      </div>
    </li>
  );
}
