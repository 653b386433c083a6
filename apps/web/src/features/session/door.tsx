import type { ReactNode } from 'react';
import classes from './sign-in-form.module.css';

/** What stands before the shop for whoever is not in it yet: the whole page, with one thing to do in its middle. */
export function Door({ children }: { children: ReactNode }) {
  return <main className={classes.door}>{children}</main>;
}
