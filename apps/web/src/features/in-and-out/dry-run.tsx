import { Button, Checkbox } from '@mantine/core';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import type { SheetView } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { address } from '../../lib/api-client';
import { count, sayNumber } from '../../lib/say';
import { RejectedRows } from './rejected-rows';
import { useImport } from './sheet-query';
import classes from './in-and-out.module.css';

/** What the import would do, what is wrong, and the button that does it. */
export function DryRun({ sheet }: { sheet: SheetView }) {
  const [leaveOut, setLeaveOut] = useState(false);
  const run = useImport(sheet);
  const { add, change, rejected } = sheet.outcome!;
  const good = add + change;
  const blocked = good === 0 || (rejected > 0 && !leaveOut);
  return (
    <section aria-labelledby="dry-run" className={classes.part}>
      <h2 id="dry-run">3. What it would change</h2>
      <Counts sheet={sheet} />
      <RejectedRows sheet={sheet} />
      {rejected > 0 && good > 0 ? (
        <Checkbox
          label={`Leave the ${count(rejected, 'rejected row')} out and import the rest`}
          checked={leaveOut}
          onChange={(event) => setLeaveOut(event.currentTarget.checked)}
        />
      ) : null}
      <div className={classes.act}>
        <Button
          variant="filled"
          disabled={blocked}
          loading={run.isPending}
          onClick={() => run.mutate({ leaveOutRejected: leaveOut })}
        >
          {good === 0 ? 'Nothing to import' : `Import ${count(good, 'row')}`}
        </Button>
        <span className="soft">
          {rejected > 0 && !leaveOut && good > 0
            ? 'Nothing goes in while rows are rejected. Mend the file and drop it again, or leave them out.'
            : good > 0
              ? 'All of it goes in, or nothing.'
              : rejected > 0
                ? 'Mend the file and drop it again.'
                : 'All that stands in the file is in the shop already.'}
        </span>
      </div>
      <ActProblem error={run.error} />
    </section>
  );
}

/** The import is done: what it did, and what goes on by itself. */
export function ImportDone({ sheet }: { sheet: SheetView }) {
  const { recheckId, rejected } = sheet.outcome!;
  return (
    <section aria-labelledby="done" role="status" className={classes.part}>
      <h2 id="done">{`${sheet.fileName} is imported`}</h2>
      <Counts sheet={sheet} done />
      {recheckId === null ? null : (
        <p>
          What units hold is being judged by it; you need not wait:{' '}
          <Link to="/rechecks/$id" params={{ id: recheckId }}>
            see how far it is
          </Link>
          .
        </p>
      )}
      {rejected > 0 ? (
        <p>
          <a href={address(`/sheets/${sheet.id}/rejected`)} download>
            {`Save the ${count(rejected, 'row')} that stayed out, each with why`}
          </a>
          . Mend them there and drop that file as the next one.
        </p>
      ) : null}
    </section>
  );
}

function Counts({ sheet, done = false }: { sheet: SheetView; done?: boolean }) {
  const { add, change, same, rejected } = sheet.outcome!;
  const rows = [
    [add, done ? 'added' : 'would be added'],
    [change, done ? 'changed' : 'would change something'],
    [same, 'are in the shop already'],
    [rejected, done ? 'stayed out' : 'are rejected'],
  ] as const;
  return (
    <ul className={classes.counts} aria-label="Rows of the file">
      {rows.map(([many, words]) => (
        <li key={words} data-rejected={(words.includes('rejected') && many > 0) || undefined}>
          <strong>{sayNumber(many)}</strong> {words}
        </li>
      ))}
    </ul>
  );
}
