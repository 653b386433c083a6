import type { ReactNode } from 'react';
import classes from './views.module.css';

/** Nothing is here, and that is not a fault: says so and what to do. */
export function EmptyView({ title, children }: { title: string; children?: ReactNode }) {
  return (
    <div className={classes.empty}>
      <p className={classes.title}>{title}</p>
      {children}
    </div>
  );
}
