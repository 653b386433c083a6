import { Button } from '@mantine/core';
import { sentenceOf } from '../lib/problem';
import classes from './views.module.css';

/** It did not work: says why and offers to try again. */
export function FailedView({ what, error, retry }: { what: string; error: unknown; retry?: () => void }) {
  return (
    <div className={classes.failed} role="alert">
      <p className={classes.title}>Could not fetch {what}</p>
      <p>{sentenceOf(error)}</p>
      {retry ? <Button onClick={retry}>Try again</Button> : null}
    </div>
  );
}
