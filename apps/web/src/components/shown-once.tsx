import classes from './shown-once.module.css';

interface ShownOnceProps {
  /** what to do with it */
  words: string;
  secret: string;
  /** what whoever has it can do, or where else it is not */
  caution?: string;
}

/** A secret or a link that was just made; it is shown this once. */
export function ShownOnce({
  words,
  secret,
  caution = 'It is kept nowhere that it could be read again.',
}: ShownOnceProps) {
  return (
    <div className={classes.once} role="status">
      <p>{words}</p>
      <code className={classes.secret}>{secret}</code>
      <p className="soft">It is shown here only now. {caution}</p>
    </div>
  );
}
