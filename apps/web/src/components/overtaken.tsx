import { Button } from '@mantine/core';
import { isStale } from '../lib/problem';
import type { Filled } from '../lib/use-filled';
import { ActProblem } from './act-problem';
import classes from './act-problem.module.css';

interface OvertakenProps<T, F> {
  filled: Filled<T, F>;
  error: unknown;
}

/** Why keeping was refused; where somebody else was quicker, what was typed stays until the person has chosen. */
export function Overtaken<T, F>({ filled, error }: OvertakenProps<T, F>) {
  const { overtakenBy } = filled;
  if (overtakenBy === null) return isStale(error) ? null : <ActProblem error={error} />;
  return (
    <div className={classes.problem} role="alert">
      <p>Somebody else changed this meanwhile. What you typed is still here and not kept.</p>
      <div className={classes.choice}>
        <Button onClick={() => filled.fill(overtakenBy)}>Show how it is now</Button>
        <Button onClick={filled.keepMine}>Leave what I typed</Button>
      </div>
    </div>
  );
}
