import type { ReactNode } from 'react';
import classes from './caution.module.css';

/** A caution in the usual words of the trade; it is read out as a note of its own. */
export function Caution({ children }: { children: ReactNode }) {
  return (
    <div role="note" className={classes.caution}>
      <strong>Caution.</strong> {children}
    </div>
  );
}
