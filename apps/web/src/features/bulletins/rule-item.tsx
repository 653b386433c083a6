import type { RuleView } from '../../../../../libs/contracts';
import { ACTION_WORDS } from '../../lib/say';
import { Said } from '../../components/said';
import classes from './bulletins.module.css';

/** A fit rule as the bulletin's reader sees it: one sentence, then its facts. */
export function RuleItem({ rule }: { rule: RuleView }) {
  return (
    <li className={classes.rule}>
      <p>
        <Said>{rule.sentence}</Said>
      </p>
      <details>
        <summary>Facts of rule {rule.key}</summary>
        <dl className={classes.facts}>
          {factsOf(rule).map(([what, said]) => (
            <div key={what}>
              <dt>{what}</dt>
              <dd>
                <Said>{said}</Said>
              </dd>
            </div>
          ))}
        </dl>
      </details>
    </li>
  );
}

function factsOf(rule: RuleView): [string, string][] {
  const facts: [string, string][] = [
    ['Line', rule.line],
    ['Models', rule.models.join(', ') || 'every model'],
    ['Options', rule.options.join(', ')],
    ['Positions', rule.positions.join(', ')],
    ['Built', rule.built],
    ['Serials', rule.serials ?? ''],
    ['In force', rule.inForce],
    ['Required', rule.required ?? ''],
    ['Allowed too', rule.allowed.join(', ')],
    ['Barred', rule.barred.map(({ part, reason }) => `${part} (${reason})`).join(', ')],
    ['For units already out', ACTION_WORDS[rule.action]],
    ['Takes the place of', rule.replaces.join(', ')],
  ];
  return facts.filter(([, said]) => said !== '');
}
