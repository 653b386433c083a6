import classes from './programs.module.css';

interface ShownOnceProps {
  /** what to do with it */
  words: string;
  secret: string;
}

/** A secret that was just made; it is shown this once. */
export function ShownOnce({ words, secret }: ShownOnceProps) {
  return (
    <div className={classes.once} role="status">
      <p>{words}</p>
      <code className={classes.secret}>{secret}</code>
      <p className="soft">It is shown here only now, and kept nowhere that it could be read again.</p>
    </div>
  );
}
