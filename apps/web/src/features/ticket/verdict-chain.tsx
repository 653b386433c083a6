import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { PlaceView, TicketView } from '../../../../../libs/contracts';
import { QueryView } from '../../components/query-view';
import { explanationQuery } from '../../lib/rulebook-queries';
import { sayDayText } from '../../lib/say';
import { Said } from '../../components/said';
import classes from './verdict-chain.module.css';

/** Everything behind the verdict of a place, one tap away; asked for when it is opened. */
export function VerdictChain({ ticket, place }: { ticket: TicketView; place: PlaceView }) {
  const [open, setOpen] = useState(false);
  const chain = useQuery(explanationQuery(ticket.id, place.position, place.place, ticket.version, open));
  return (
    <details className={classes.chain} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>From question to verdict</summary>
      {open ? (
        <QueryView query={chain} what="the reasons">
          {({ text, kept }) => (
            <>
              <ol>
                {text.map((line, i) => (
                  <li key={i}>
                    <Said>{line}</Said>
                  </li>
                ))}
              </ol>
              {kept && kept.text.join() !== text.join() ? (
                <details>
                  <summary>As it was judged on {sayDayText(kept.judgedOn)}</summary>
                  <ol>
                    {kept.text.map((line, i) => (
                      <li key={i}>
                        <Said>{line}</Said>
                      </li>
                    ))}
                  </ol>
                </details>
              ) : null}
            </>
          )}
        </QueryView>
      ) : null}
    </details>
  );
}
