import { Link } from '@tanstack/react-router';
import type { SerialSchemeRow } from '../../../../../libs/contracts';
import { count, saySpanText } from '../../lib/say';
import { FIELD_WORDS } from './field-words';
import classes from './shop-data.module.css';

/** Serial schemes, maker by maker, the oldest first. */
export function SchemesList({ schemes }: { schemes: readonly SerialSchemeRow[] }) {
  const makers = [...new Set(schemes.map(({ makerName }) => makerName))];
  return (
    <>
      {makers.map((maker) => (
        <section key={maker} aria-label={maker} className={classes.maker}>
          <h3>{maker}</h3>
          <ul className={classes.list}>
            {schemes
              .filter(({ makerName }) => makerName === maker)
              .map((row) => (
                <li key={row.id}>
                  <SchemeLine row={row} />
                </li>
              ))}
          </ul>
        </section>
      ))}
    </>
  );
}

function SchemeLine({ row: { id, scheme, units } }: { row: SerialSchemeRow }) {
  const used = saySpanText({ from: scheme.validFrom, to: scheme.validTo });
  return (
    <Link to="/shop/schemes/$id" params={{ id }} className={classes.row}>
      <span>
        <strong>{scheme.name}</strong>
        <br />
        <span className="soft">{scheme.fields.map(({ kind }) => FIELD_WORDS[kind]).join(' · ')}</span>
      </span>
      <span>
        {used}
        <br />
        <span className="soft">
          {count(units, 'unit')} read by it; {scheme.source}
        </span>
      </span>
    </Link>
  );
}
