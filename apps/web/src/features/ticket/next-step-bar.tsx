import { Button } from '@mantine/core';
import { useMemo, useRef, useState } from 'react';
import type { TicketView } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { useHotkeys } from '../../lib/hotkeys';
import { buttonWords, nextStep } from './next-step';
import { useTicketAct } from './ticket-query';
import { Said } from '../../components/said';
import classes from './next-step-bar.module.css';

/** The one next thing, bottom right. While something is missing, pressing it shows what. */
export function NextStepBar({ ticket }: { ticket: TicketView }) {
  const act = useTicketAct(ticket.id);
  const [shown, setShown] = useState(false);
  const step = nextStep(ticket);
  const button = useRef<HTMLButtonElement>(null);
  useHotkeys(useMemo(() => ({ n: () => button.current?.focus() }), []));
  if (!step) return null;
  const blocked = step.missing.length > 0;
  const press = () =>
    blocked ? setShown(!shown) : act.mutate({ method: 'POST', path: '/stage', body: { to: step.to } });
  return (
    <div className={classes.bar}>
      {shown && blocked ? (
        <div className={classes.list} id="still-missing">
          <h2>Still missing</h2>
          <ul>
            {step.missing.map(({ code, sentence, position }) => (
              <li key={`${code}-${position}-${sentence}`}>
                {position ? (
                  <a href={`#position-${position}`}>
                    <Said>{sentence}</Said>
                  </a>
                ) : (
                  <Said>{sentence}</Said>
                )}
              </li>
            ))}
          </ul>
        </div>
      ) : null}
      <ActProblem error={act.error} />
      <div className={classes.act}>
        <Button
          ref={button}
          size="lg"
          variant={blocked ? 'outline' : 'filled'}
          aria-expanded={blocked ? shown : undefined}
          aria-controls={shown && blocked ? 'still-missing' : undefined}
          loading={act.isPending}
          onClick={press}
        >
          {buttonWords(step)}
        </Button>
      </div>
    </div>
  );
}
