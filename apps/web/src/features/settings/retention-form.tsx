import { Button, TextInput } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import type { FormEvent } from 'react';
import type { Retention } from '../../../../../libs/contracts';
import { Overtaken } from '../../components/overtaken';
import { QueryView } from '../../components/query-view';
import { count, sayDayText } from '../../lib/say';
import { useFilled } from '../../lib/use-filled';
import { retentionQuery, useSettleRetention } from './retention-query';
import classes from './settings.module.css';

const typedFrom = ({ years }: Retention): string => (years === null ? '' : String(years));

/** For how long an owner is kept of whom nothing is heard; who would go is shown before it is settled. */
export function RetentionForm({ settled }: { settled: Retention }) {
  const filled = useFilled(settled, typedFrom);
  const { typed, setTyped } = filled;
  const settle = useSettleRetention(filled.version);
  const years = readYears(typed);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (years !== undefined) settle.mutate(years, { onSuccess: filled.fill });
  };
  return (
    <form onSubmit={submit} className={classes.form}>
      <fieldset className={classes.part}>
        <legend>How long owners are kept</legend>
        <p>
          An owner of whom no ticket is heard for so many years is forgotten: name, phone and addresses go, machines and
          tickets stay. Nobody goes while a unit is in the shop or a stop use is to be called about.
        </p>
        <TextInput
          className={classes.short}
          label="Years without a ticket"
          description="Empty: owners are kept for ever."
          inputMode="numeric"
          value={typed}
          error={years === undefined ? 'Expected 1 to 50 whole years, or nothing.' : undefined}
          onChange={(event) => setTyped(event.currentTarget.value)}
        />
        {typeof years === 'number' ? <WouldGo years={years} /> : null}
      </fieldset>
      <Overtaken filled={filled} error={settle.error} />
      {settle.isSuccess ? <p role="status">Kept. Who is due goes with the next day.</p> : null}
      <Button
        type="submit"
        variant="filled"
        loading={settle.isPending}
        disabled={years === undefined || years === settled.years}
      >
        Keep this time
      </Button>
    </form>
  );
}

/** The dry list. */
function WouldGo({ years }: { years: number }) {
  const found = useQuery(retentionQuery(years));
  return (
    <QueryView query={found} what="who would be forgotten">
      {({ due, dueCount }) => (
        <>
          <p role="status">
            {dueCount === 0
              ? 'Nobody would be forgotten now.'
              : `${count(dueCount, 'owner')} would be forgotten with the next day.`}
          </p>
          {dueCount > 0 ? (
            <details>
              <summary>{dueCount > due.length ? `Who: the first ${due.length}` : 'Who'}</summary>
              <ul>
                {due.map(({ id, name, location, lastSeenOn }) => (
                  <li key={id}>
                    <Link to="/owners/$id" params={{ id }}>
                      {name}
                    </Link>
                    , {location}, last here {sayDayText(lastSeenOn)}
                  </li>
                ))}
              </ul>
            </details>
          ) : null}
        </>
      )}
    </QueryView>
  );
}

/** Whole years from 1 to 50, null for none; undefined for anything else. */
function readYears(text: string): number | null | undefined {
  if (text.trim() === '') return null;
  const years = /^\s*\d{1,2}\s*$/.test(text) ? Number(text) : 0;
  return years >= 1 && years <= 50 ? years : undefined;
}
