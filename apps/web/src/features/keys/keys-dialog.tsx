import { Checkbox, Modal } from '@mantine/core';
import { useState } from 'react';
import { keysAreOn, switchKeys } from '../../lib/hotkeys';
import classes from './keys-help.module.css';

const KEYS = [
  ['/', 'Search'],
  ['?', 'Show these keys'],
  ['Tab', 'To the next field or button; with Shift, back'],
  ['Enter', 'In a field for a part: keep it and go to the next'],
  ['n', 'Ticket: to the button for the next step'],
  ['j, k', 'Flagged and callbacks: next, previous'],
  ['a', 'Flagged: accept the one marked'],
  ['s', 'Flagged: send the one marked back to the bench'],
  ['c', 'Flagged: order a callback for the one marked'],
  ['x', 'Flagged: tick the one marked'],
] as const;

/** The keys, and a switch that turns the single letters off. */
export function KeysDialog({ open, onClose }: { open: boolean; onClose: () => void }) {
  const [on, setOn] = useState(keysAreOn);
  const change = (wanted: boolean) => {
    switchKeys(wanted);
    setOn(wanted);
  };
  return (
    <Modal opened={open} onClose={onClose} title="Keys">
      <dl className={classes.keys}>
        {KEYS.map(([key, words]) => (
          <div key={key}>
            <dt>
              <kbd>{key}</kbd>
            </dt>
            <dd>{words}</dd>
          </div>
        ))}
      </dl>
      <Checkbox
        label="Single-letter keys are on"
        checked={on}
        onChange={(event) => change(event.currentTarget.checked)}
      />
    </Modal>
  );
}
