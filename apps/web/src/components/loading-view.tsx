import classes from './views.module.css';

/** Something is on its way: says what. */
export function LoadingView({ what }: { what: string }) {
  return (
    <p className={classes.loading} role="status">
      Fetching {what} …
    </p>
  );
}
