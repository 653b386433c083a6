import type { WhatIf } from '../../../../../libs/contracts';
import { sayNumber } from '../../lib/say';
import { Said } from '../../components/said';
import classes from './bulletins.module.css';

const SEVERITY_WORDS: Record<string, string> = { error: 'Mend this', warning: 'Look at this', note: 'Good to know' };

/** The parts on the shelves that it would bar or end, and the tickets they are picked for. */
function ShelfShare({ share }: { share: WhatIf['shelf'] }) {
  if (share.length === 0) return <p>Nothing on the shelf is touched by it.</p>;
  return (
    <>
      <h3>On the shelf</h3>
      <ul>
        {share.map(({ part, kind, stillGood, location, bin, onHand, holders }) => (
          <li key={`${part.key} ${location}`}>
            <span className="num">{onHand}</span> of <span className="num">{part.number}</span>
            {bin === '' ? '' : ` in ${bin}`}, {location}: {kind === 'barred' ? 'barred' : 'no longer right'}
            {stillGood ? ' for some units, still right for others' : ' for every unit'}
            {holders.length > 0
              ? `; picked for ${holders.map(({ ticket, pieces }) => `${ticket} (${pieces})`).join(', ')}`
              : ''}
          </li>
        ))}
      </ul>
    </>
  );
}

/** What publishing would bring: the counts, why, the first few, and what the audit of the rulebook found. */
export function WhatIfResult({ result }: { result: WhatIf }) {
  return (
    <section aria-labelledby="what-if" className={classes.whatIf}>
      <h2 id="what-if">If it were published now</h2>
      <p>
        <strong>{sayNumber(result.changed)}</strong> of {sayNumber(result.installs)} installs would get another verdict:{' '}
        <strong>{sayNumber(result.tickets)}</strong> open tickets touched,{' '}
        <strong>{sayNumber(result.callbacks)}</strong> owners to call.
      </p>
      <ul>
        {result.byReason.map(({ reason, count }) => (
          <li key={reason}>
            <span className="num">{count}</span> {reason}
          </li>
        ))}
      </ul>
      <ShelfShare share={result.shelf} />
      {result.findings.length > 0 ? (
        <>
          <h3>Look at these before publishing</h3>
          <ul>
            {result.findings.map(({ severity, sentence }) => (
              <li key={sentence}>
                <strong>{SEVERITY_WORDS[severity] ?? severity}:</strong> <Said>{sentence}</Said>
              </li>
            ))}
          </ul>
        </>
      ) : (
        <p>The rulebook would have nothing wrong with it that it has not today.</p>
      )}
      {result.first.length > 0 ? (
        <details>
          <summary>The first {result.first.length}</summary>
          <ul>
            {result.first.map((one) => (
              <li key={`${one.unit} ${one.position} ${one.placeName}`}>
                {one.unit}, {one.owner}: {one.position} {one.placeName}, {one.from} becomes {one.to}
              </li>
            ))}
          </ul>
        </details>
      ) : null}
    </section>
  );
}
