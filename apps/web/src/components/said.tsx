import { saySentence } from '../lib/say';
import classes from './said.module.css';

/** A number with a dash in it, such as a part, a bulletin or a model; longer ones may have to be broken on a phone. */
const NUMBERS = /((?<=^|[\s(“])(?=\S*\d)(?=\S*-)[\p{L}\d./-]{3,24}(?=$|[\s)”.,;:]))/u;

/** A sentence of the program as the person reads it; the numbers in it stay on one line. */
export function Said({ children }: { children: string }) {
  const parts = saySentence(children).split(NUMBERS);
  if (parts.length === 1) return parts[0];
  return parts.map((part, index) =>
    index % 2 === 1 ? (
      <span key={index} className={classes.kept}>
        {part}
      </span>
    ) : (
      part
    ),
  );
}
