import { Button, TextInput } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import type { ShelfPull } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { PartNumber } from '../../components/part-number';
import { QueryView } from '../../components/query-view';
import { sayInstant } from '../../lib/say';
import { useMay } from '../../lib/session';
import { pullsQuery, useMarkPulled } from './shelf-query';
import { Said } from '../../components/said';
import classes from './shelf.module.css';

interface PullsListProps {
  /** only those of this bulletin */
  bulletinId?: number;
}

/** Parts on the shelf that bulletins bar or end: what to pull from which bin, and what has been seen to. Nothing when there is none. */
export function PullsList({ bulletinId }: PullsListProps) {
  const pulls = useQuery(pullsQuery(bulletinId));
  return (
    <QueryView query={pulls} what="what bulletins have pulled">
      {(all) => {
        const shown = bulletinId === undefined ? all.filter(({ done }) => done === null) : all;
        if (shown.length === 0) return null;
        return (
          <section aria-labelledby="pulls" className={classes.pulls}>
            <h2 id="pulls">{bulletinId === undefined ? 'Bulletins speak against these' : 'On the shelf'}</h2>
            <ul>
              {shown.map((pull) => (
                <PullRow key={`${pull.noticeId} ${pull.item.id}`} pull={pull} named={bulletinId === undefined} />
              ))}
            </ul>
          </section>
        );
      }}
    </QueryView>
  );
}

function PullRow({ pull, named }: { pull: ShelfPull; named: boolean }) {
  const { bulletin, item, sentence, sentences, holders, done } = pull;
  return (
    <li className={classes.pull} data-done={done !== null}>
      <p>
        <strong>
          <Said>{sentence}</Said>
        </strong>{' '}
        <PartNumber number={item.part.number} name={item.part.name} /> <span className="soft">{item.location}</span>
        {named ? (
          <>
            {' '}
            <Link to="/bulletins/$id" params={{ id: bulletin.id }}>
              {bulletin.number}
            </Link>
          </>
        ) : null}
      </p>
      <details>
        <summary>{sentences[0] ?? 'For which units'}</summary>
        <ul>
          {sentences.slice(1).map((one) => (
            <li key={one}>{one}</li>
          ))}
        </ul>
      </details>
      {holders.length > 0 ? (
        <p>
          Picked for{' '}
          {holders.map(({ ticketId, ticket, pieces }, index) => (
            <span key={ticketId}>
              {index > 0 ? ', ' : ''}
              <Link to="/tickets/$id" params={{ id: ticketId }}>
                {ticket}
              </Link>{' '}
              ({pieces})
            </span>
          ))}
        </p>
      ) : null}
      {done ? (
        <p className="soft">
          Seen to: {done.pieces} pieces, {sayInstant(done.at)}
          {done.by ? `, ${done.by}` : ''}
          {done.note === '' ? '' : `: ${done.note}`}
        </p>
      ) : (
        <MarkDone pull={pull} />
      )}
    </li>
  );
}

function MarkDone({ pull: { noticeId, item, stillGood } }: { pull: ShelfPull }) {
  const [note, setNote] = useState('');
  const mark = useMarkPulled();
  if (!useMay('move-stock')) return null;
  return (
    <>
      <div className={classes.done}>
        <TextInput
          aria-label={`What was done with ${item.part.number}`}
          placeholder={stillGood ? 'such as: marked with a red tag' : 'such as: sent back to the supplier'}
          value={note}
          onChange={(event) => setNote(event.currentTarget.value)}
        />
        <Button loading={mark.isPending} onClick={() => mark.mutate({ noticeId, itemId: item.id, note: note.trim() })}>
          Seen to
        </Button>
      </div>
      <ActProblem error={mark.error} />
    </>
  );
}
