import { Button, Checkbox } from '@mantine/core';
import { SOURCE_WORDS } from '../../lib/say';
import { moved, tied, type Rank } from './typed-settings';
import classes from './settings.module.css';

interface StandingOrderProps {
  ranks: readonly Rank[];
  onChange: (ranks: readonly Rank[]) => void;
}

/** The kinds of paper, the highest first; each goes up or down a step, or is tied with the one above. */
export function StandingOrder({ ranks, onChange }: StandingOrderProps) {
  return (
    <ol className={classes.ranks} aria-label="Kinds of paper, the highest first">
      {ranks.map(({ kind, tied: together }, index) => {
        const words = SOURCE_WORDS[kind] ?? kind;
        return (
          <li key={kind} className={classes.rank} data-tied={together}>
            <strong>{words}</strong>
            {index === 0 ? (
              <span className="soft">decides over all</span>
            ) : (
              <Checkbox
                label="ties with the one above"
                aria-label={`${words} ties with the one above`}
                checked={together}
                onChange={(event) => onChange(tied(ranks, index, event.currentTarget.checked))}
              />
            )}
            <span className={classes.steps}>
              <Button
                aria-label={`${words} up`}
                disabled={index === 0}
                onClick={() => onChange(moved(ranks, index, -1))}
              >
                Up
              </Button>
              <Button
                aria-label={`${words} down`}
                disabled={index === ranks.length - 1}
                onClick={() => onChange(moved(ranks, index, 1))}
              >
                Down
              </Button>
            </span>
          </li>
        );
      })}
    </ol>
  );
}
