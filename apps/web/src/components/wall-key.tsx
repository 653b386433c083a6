import classes from './wall-picture.module.css';

/** What the marks of the wall picture mean; stands on the printed chart. */
export function WallKey() {
  return (
    <p>
      <svg width="22" height="20" viewBox="0 0 22 20" aria-hidden="true">
        <path className={classes.diamondHalf} d="M10 1 v18 l-9 -9 z" />
        <path className={classes.diamondOther} d="M12 1 v18 l9 -9 z" />
      </svg>{' '}
      papers that disagree: fit nothing in doubt, ask the maker. Where the paper shows through, no paper says anything.
      A span too narrow for its number is named in the table.
    </p>
  );
}
