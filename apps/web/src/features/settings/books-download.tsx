import { Button } from '@mantine/core';
import { useState } from 'react';
import { DayField } from '../../components/day-field';
import { address } from '../../lib/api-client';
import { todayText } from '../../lib/say';
import classes from './settings.module.css';

/** The estimates of what was handed over in a span of days, as a table for the shop's books. */
export function BooksDownload() {
  const today = todayText();
  const [span, setSpan] = useState({ from: `${today.slice(0, 8)}01`, to: today });
  const wrong = span.from === '' || span.to === '' || span.from >= span.to;
  return (
    <fieldset className={classes.part}>
      <legend>For the books</legend>
      <p>
        Every line of what was handed over from the first day on and before the second, as CSV. It is no invoice and no
        account.
      </p>
      <div className={classes.fields}>
        <DayField label="From" value={span.from} onChange={(from) => setSpan({ ...span, from })} />
        <DayField label="Before" value={span.to} onChange={(to) => setSpan({ ...span, to })} />
      </div>
      <p className={classes.act}>
        {wrong ? (
          <span role="status">The first day lies before the second.</span>
        ) : (
          <Button component="a" href={address('/bookkeeping', span)} download>
            Download the table
          </Button>
        )}
      </p>
    </fieldset>
  );
}
