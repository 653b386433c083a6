import { TextInput } from '@mantine/core';
import { useMemo, useState } from 'react';
import { prepareShop, readSerial, writeDays, type SerialScheme } from '../../../../../libs/build-date';
import { day } from '../../../../../libs/day';
import { saySentence, saySpans, todayText } from '../../lib/say';
import { ReadCharacters } from './read-characters';
import classes from './shop-data.module.css';

interface SchemeTrialProps {
  /** the scheme as it stands in the form; null while it cannot be read by */
  scheme: SerialScheme | null;
  problems: readonly string[];
  /** the maker's other schemes, kept */
  others: readonly SerialScheme[];
}

/** Type a serial and see at once which characters the scheme reads as what, and the days that leaves. */
export function SchemeTrial({ scheme, problems, others }: SchemeTrialProps) {
  const [serial, setSerial] = useState('');
  return (
    <section aria-labelledby="trial" className={classes.trial}>
      <h2 id="trial">Try it</h2>
      <TextInput
        label="A serial number as the plate has it"
        className={classes.number}
        value={serial}
        autoCapitalize="characters"
        spellCheck={false}
        maxLength={40}
        onChange={(event) => setSerial(event.currentTarget.value)}
      />
      {scheme === null ? (
        <ul className={classes.problems}>
          {problems.map((problem) => (
            <li key={problem}>{`Not a scheme yet: ${problem}.`}</li>
          ))}
        </ul>
      ) : serial.trim() === '' ? (
        <p className="soft">Nothing is kept by trying.</p>
      ) : (
        <Tried serial={serial} scheme={scheme} others={others} />
      )}
    </section>
  );
}

function Tried({ serial, scheme, others }: { serial: string; scheme: SerialScheme; others: readonly SerialScheme[] }) {
  const { alone, together } = useMemo(() => {
    const read = (serialSchemes: SerialScheme[]) =>
      readSerial(
        serial,
        { maker: scheme.maker },
        prepareShop({ serialSchemes, standardEditions: [] }),
        day(todayText()),
      );
    return { alone: read([scheme]), together: read([scheme, ...others]) };
  }, [serial, scheme, others]);
  const [reading] = alone.readings;
  const [rejected] = alone.rejected;
  return (
    <div role="status">
      {reading ? (
        <>
          <ReadCharacters reading={reading} />
          <p>
            Built <strong>{saySpans(writeDays(reading.days))}</strong>.
          </p>
        </>
      ) : (
        <p>{rejected ? `Not read: ${rejected.why}.` : 'It does not have the form of this scheme.'}</p>
      )}
      {others.length > 0 ? (
        <p className="soft">{`With the maker's other schemes: ${saySentence(together.sentence)}`}</p>
      ) : null}
    </div>
  );
}
