import { Button } from '@mantine/core';
import { useState } from 'react';
import { sayPartialDate } from '../../../../../libs/day';
import type { SavedStandardEdition, StandardEditionRow } from '../../../../../libs/contracts';
import { sayDayText, saySentence } from '../../lib/say';
import { EditionForm } from './edition-form';
import { RecomputeProgress } from './recompute-progress';
import classes from './shop-data.module.css';

/** Editions of standards that plates name, each with the paper its days come from; one at a time is changed. */
export function EditionsList({ editions, mayEdit }: { editions: readonly StandardEditionRow[]; mayEdit: boolean }) {
  const [open, setOpen] = useState<number | 'new' | null>(null);
  const [recheckId, setRecheckId] = useState<number | null>(null);
  const onSaved = ({ recheck }: SavedStandardEdition) => {
    setRecheckId(recheck.id);
    setOpen(null);
  };
  const form = (row: StandardEditionRow | null) => (
    <EditionForm key={row?.version ?? 0} saved={row} onSaved={onSaved} onLeave={() => setOpen(null)} />
  );
  return (
    <>
      {recheckId === null ? null : <RecomputeProgress recheckId={recheckId} />}
      <ul className={classes.list}>
        {editions.map((row) => (
          <li key={row.id} className={classes.edition}>
            {open === row.id ? form(row) : <EditionLine row={row} onOpen={mayEdit ? () => setOpen(row.id) : null} />}
          </li>
        ))}
      </ul>
      {open === 'new' ? (
        form(null)
      ) : mayEdit ? (
        <Button mt="sm" onClick={() => setOpen('new')}>
          Add an edition
        </Button>
      ) : null}
    </>
  );
}

function EditionLine({ row, onOpen }: { row: StandardEditionRow; onOpen: (() => void) | null }) {
  const { standard, edition, approved, published, subject, source } = row.edition;
  const days = [
    approved ? `approved ${saySentence(sayPartialDate(approved))}` : null,
    published ? `published ${saySentence(sayPartialDate(published))}` : null,
  ].filter((one) => one !== null);
  return (
    <div className={classes.editionLine}>
      <span>
        <strong className="num">{`${standard}-${edition}`}</strong> {subject}
      </span>
      <span>{days.join(', ') || `no day known; not named before ${sayDayText(`${Number(edition) - 1}-01-01`)}`}</span>
      <span className="soft">{`Source: ${source}`}</span>
      {onOpen ? (
        <Button variant="subtle" px="xs" onClick={onOpen} aria-label={`Change ${standard}-${edition}`}>
          Change
        </Button>
      ) : null}
    </div>
  );
}
