import classes from './part-number.module.css';

/**
 * A part number as the maker prints it, in the type whose letters and figures can be told apart. The groups between
 * dashes and blanks never break over a line; copying gives plain text.
 */
export function PartNumber({ number, name }: { number: string; name?: string }) {
  return (
    <span>
      <span className={classes.number}>{number}</span>
      {name ? <span className={classes.name}> {name}</span> : null}
    </span>
  );
}
