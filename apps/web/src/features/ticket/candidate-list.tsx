import { Button } from '@mantine/core';
import type { PlaceSide } from '../../../../../libs/contracts';
import { PartNumber } from '../../components/part-number';
import classes from './place-entry.module.css';

/** The parts its marks allow; a person may say which it is, and need not when all get the same verdict. */
export function CandidateList({ side, onPick }: { side: PlaceSide; onPick: (key: string) => void }) {
  if (side.candidates.length === 0) return <p className="soft">No part of the catalogue has these marks.</p>;
  const settled = side.verdict !== null && side.verdict.verdict !== 'undecided' && side.candidates.length > 1;
  return (
    <div className={classes.candidates}>
      <p>
        {settled
          ? 'All of these get the same verdict; there is no need to tell them apart.'
          : 'By its marks it can be:'}
      </p>
      <ul>
        {side.candidates.map(({ key, number, name }) => (
          <li key={key}>
            <PartNumber number={number} name={name} />
            {side.part?.key === key ? (
              <strong>picked</strong>
            ) : (
              <Button onClick={() => onPick(key)}>It is this one</Button>
            )}
          </li>
        ))}
      </ul>
    </div>
  );
}
