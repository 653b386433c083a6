import { Button, Checkbox } from '@mantine/core';
import { Link } from '@tanstack/react-router';
import type { FlagView } from '../../../../../libs/contracts';
import { TorqueBar } from '../../components/torque-bar';
import { VerdictMark } from '../../components/verdict-mark';
import { STAGE_WORDS } from '../../lib/say';
import { withoutVerdictWord } from '../../lib/verdict-words';
import type { Decision } from './decide-dialog';
import { Said } from '../../components/said';
import classes from './flags.module.css';

interface FlagRowProps {
  flag: FlagView;
  marked: boolean;
  ticked: boolean;
  mayDecide: boolean;
  onTick: () => void;
  onMark: () => void;
  onDecide: (decision: Decision) => void;
}

/** One flagged install as a sentence, with the decisions at its end. */
export function FlagRow({ flag, marked, ticked, mayDecide, onTick, onMark, onDecide }: FlagRowProps) {
  const { ticket } = flag;
  return (
    <li
      className={classes.row}
      data-marked={marked}
      data-flag={flag.id}
      tabIndex={-1}
      onFocus={onMark}
      onPointerDown={onMark}
    >
      {mayDecide ? (
        <Checkbox aria-label={`Tick ${ticket.number} ${flag.placeName}`} checked={ticked} onChange={onTick} />
      ) : null}
      <div className={classes.words}>
        <p>
          <VerdictMark verdict={flag.verdict} /> <strong>{flag.placeName}.</strong>{' '}
          <Said>{withoutVerdictWord(flag.sentence, flag.verdict)}</Said>
          {flag.strength ? (
            <strong>
              {' '}
              <Said>{flag.strength.sentences[0] ?? ''}</Said>
            </strong>
          ) : null}
        </p>
        {flag.strength ? (
          <details>
            <summary>Torque</summary>
            <TorqueBar strength={flag.strength} />
          </details>
        ) : null}
        <p className="soft">
          <Link to="/tickets/$id" params={{ id: ticket.id }}>
            {ticket.number}
          </Link>{' '}
          {flag.unit}, {flag.owner}; {STAGE_WORDS[ticket.stage].toLowerCase()}
          {ticket.bench ? `, bench ${ticket.bench}` : ''}
        </p>
      </div>
      {mayDecide ? (
        <div className={classes.acts}>
          <Button onClick={() => onDecide('accept')}>Accept</Button>
          <Button onClick={() => onDecide('send-back')}>Send back</Button>
          <Button onClick={() => onDecide('callback')}>Callback</Button>
        </div>
      ) : null}
    </li>
  );
}
