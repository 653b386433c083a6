import type { VerdictView } from '../../../../libs/contracts';
import { ACTION_WORDS, SOURCE_WORDS, sayDayText } from '../lib/say';
import { withoutVerdictWord } from '../lib/verdict-words';
import { TorqueBar } from './torque-bar';
import { VerdictMark } from './verdict-mark';
import { Said } from './said';
import classes from './verdict-why.module.css';

/** A verdict as shape, word and one line of why; everything behind it one tap away. */
export function VerdictWhy({ verdict }: { verdict: VerdictView }) {
  return (
    <div className={classes.verdict}>
      <p className={classes.line}>
        <VerdictMark verdict={verdict.verdict} />{' '}
        <span>
          <Said>{withoutVerdictWord(verdict.sentence, verdict.verdict)}</Said>
        </span>
      </p>
      <details>
        <summary>Why</summary>
        <dl className={classes.facts}>
          {factsOf(verdict).map(([what, said]) => (
            <div key={what}>
              <dt>{what}</dt>
              <dd>
                <Said>{said}</Said>
              </dd>
            </div>
          ))}
        </dl>
        {verdict.strength ? <TorqueBar strength={verdict.strength} /> : null}
      </details>
    </div>
  );
}

const KNOWN = { yes: 'Yes, the paper was here by then.', no: 'No, the paper came later.' };

function factsOf(verdict: VerdictView): [string, string][] {
  const { source, required } = verdict;
  const facts: [string, string | null][] = [
    ['Required', required ? `${required.number} ${required.name}` : null],
    [
      'Paper',
      source
        ? `${SOURCE_WORDS[source.kind] ?? source.kind} ${source.number}, “${source.title}”, ${sayDayText(source.issued)}`
        : null,
    ],
    ['Rule', verdict.rule],
    ['For units built', verdict.builtSpan || null],
    ['In force', verdict.inForceSpan || null],
    ['Barred because', verdict.barredWhy],
    ['When it was fitted', verdict.thenVerdict],
    [
      'Could the shop have known',
      verdict.couldHaveKnown === null ? null : KNOWN[verdict.couldHaveKnown ? 'yes' : 'no'],
    ],
    ['For units already out', verdict.action ? ACTION_WORDS[verdict.action] : null],
    ['Rulebook revision', String(verdict.revision)],
  ];
  return facts.filter((fact): fact is [string, string] => fact[1] !== null);
}
