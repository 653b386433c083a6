import type { WarrantyView } from '../../../../../libs/contracts';
import { Said } from '../../components/said';
import { sayDayText } from '../../lib/say';
import type { BarredPart } from './barred-by';
import classes from './parts-panel.module.css';

interface BarredHereProps {
  barred: readonly BarredPart[];
  warranty: WarrantyView | null;
}

/** Parts that must not be picked here, or not before more is known of the unit, each with why, the paper that says so, and what it does to the warranty. */
export function BarredHere({ barred, warranty }: BarredHereProps) {
  if (barred.length === 0) return null;
  return (
    <div role="status" className={classes.barred}>
      <ul>
        {barred.map(({ part, reason, rule, source, voidsWarranty, always }) => (
          <li key={`${part.key} ${rule}`}>
            <strong>
              {always ? 'Do not fit' : 'Not before it is settled what this unit is:'}{' '}
              <span className="num">{part.number}</span>:
            </strong>{' '}
            <Said>{`${reason}, by ${source}.`}</Said>
            {voidsWarranty ? ` ${stake(warranty)}` : ''}
          </li>
        ))}
      </ul>
    </div>
  );
}

function stake(warranty: WarrantyView | null): string {
  if (!warranty) return 'Whether the warranty runs is not known.';
  const last = sayDayText(warranty.lastDay);
  return warranty.runs ? `The warranty runs until ${last}.` : `The warranty ended with ${last}.`;
}
