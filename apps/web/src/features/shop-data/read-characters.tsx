import type { SerialReading } from '../../../../../libs/build-date';
import { FIELD_WORDS, groupOf } from './field-words';
import classes from './shop-data.module.css';

/** The characters of a serial with, under each run of them, what they were read as. */
export function ReadCharacters({ reading }: { reading: SerialReading }) {
  return (
    <ol className={classes.characters} aria-label={`${reading.characters}, read piece by piece`}>
      {reading.fields
        .filter(({ text }) => text !== '')
        .map(({ at, kind, text, meaning }) => (
          <li key={`${at}-${kind}`} data-group={groupOf(kind)}>
            <span className={classes.run}>{text}</span>
            <span className={classes.kind}>{FIELD_WORDS[kind]}</span>
            <span className={classes.meaning}>{meaning}</span>
          </li>
        ))}
    </ol>
  );
}
