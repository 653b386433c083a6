import type { PlaceSide } from '../../../../../libs/contracts';
import { PartNumber } from '../../components/part-number';
import classes from './place-entry.module.css';

/** The parts its marks allow as they were recorded, or the one that was picked and how it was told. */
export function CandidateList({ side }: { side: PlaceSide }) {
  if (side.part) return side.told ? <p className="soft">{side.told}</p> : null;
  if (side.candidates.length === 0) return <p className="soft">No part of the catalogue has these marks.</p>;
  return (
    <div className={classes.candidates}>
      <p>{side.needless ?? 'By its marks it can be:'}</p>
      <ul>
        {side.candidates.map(({ key, number, name }) => (
          <li key={key}>
            <PartNumber number={number} name={name} />
          </li>
        ))}
      </ul>
    </div>
  );
}
