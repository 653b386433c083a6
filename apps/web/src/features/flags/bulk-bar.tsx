import { Button } from '@mantine/core';
import { count } from '../../lib/say';
import type { Decision } from './decide-dialog';
import classes from './flags.module.css';

interface BulkBarProps {
  many: number;
  onDecide: (decision: Decision) => void;
  onClear: () => void;
}

/** One decision for all that are ticked. */
export function BulkBar({ many, onDecide, onClear }: BulkBarProps) {
  return (
    <div className={classes.bulk} role="group" aria-label="For all ticked">
      <strong>{count(many, 'install')} ticked</strong>
      <Button variant="filled" onClick={() => onDecide('accept')}>
        Accept them
      </Button>
      <Button onClick={() => onDecide('send-back')}>Send them back</Button>
      <Button onClick={() => onDecide('callback')}>Order callbacks</Button>
      <Button variant="subtle" onClick={onClear}>
        Untick all
      </Button>
    </div>
  );
}
