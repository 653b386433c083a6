import type { WhatIf } from '../../../../../libs/contracts';
import classes from './bulletins.module.css';

const SEVERITY_WORDS: Record<string, string> = { error: 'Mend this', warning: 'Look at this', note: 'Good to know' };

/** What publishing would bring: the counts, why, the first few, and what the audit of the rulebook found. */
export function WhatIfResult({ result }: { result: WhatIf }) {
  return (
    <section aria-labelledby="what-if" className={classes.whatIf}>
      <h2 id="what-if">If it were published now</h2>
      <p>
        <strong>{result.changed.toLocaleString()}</strong> of {result.installs.toLocaleString()} installs would get
        another verdict: <strong>{result.tickets.toLocaleString()}</strong> open tickets touched,{' '}
        <strong>{result.callbacks.toLocaleString()}</strong> owners to call.
      </p>
      <ul>
        {result.byReason.map(({ reason, count }) => (
          <li key={reason}>
            <span className="num">{count}</span> {reason}
          </li>
        ))}
      </ul>
      {result.findings.length > 0 ? (
        <>
          <h3>Look at these before publishing</h3>
          <ul>
            {result.findings.map(({ severity, sentence }) => (
              <li key={sentence}>
                <strong>{SEVERITY_WORDS[severity] ?? severity}:</strong> {sentence}
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
