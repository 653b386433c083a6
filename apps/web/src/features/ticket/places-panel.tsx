import { Button } from '@mantine/core';
import { useState } from 'react';
import type { TicketView } from '../../../../../libs/contracts';
import { EmptyView } from '../../components/empty-view';
import { LineSketch } from '../../components/line-sketch';
import { count } from '../../lib/say';
import { useMay } from '../../lib/session';
import { LeaveOutRest } from './leave-out-rest';
import { openSide } from './open-side';
import { worstVerdict } from './place-record';
import { PositionGroup } from './position-group';
import { codesToWorkOn } from './to-work-on';
import classes from './places-panel.module.css';

/** Every place of every position: as found, as left, required, and one line of why; the sketch shows where. */
export function PlacesPanel({ ticket }: { ticket: TicketView }) {
  const [mending, setMending] = useState(false);
  const mayRecord = useMay('record-places');
  const open = mayRecord ? openSide(ticket, mending) : null;
  const mayMend = mayRecord && openSide(ticket, true) === 'found' && ticket.stage !== 'inspection';
  const placesOf = (code: string) => ticket.places.filter(({ position }) => position === code);
  const recorded = ticket.places.filter(({ found }) => found !== null).length;
  if (ticket.positions.length === 0) {
    return (
      <section aria-labelledby="the-places">
        <h2 id="the-places">The places</h2>
        <EmptyView title="Not known yet which places this unit has">
          <p>Say which product line it belongs to, under plate and serial.</p>
        </EmptyView>
      </section>
    );
  }
  // At the repair only what is worked on is written; the rest is folded away.
  const working = ticket.stage === 'repair' ? codesToWorkOn(ticket) : null;
  const here = ticket.positions.filter(({ code }) => working?.has(code) ?? true);
  const folded = ticket.positions.filter((position) => !here.includes(position));
  const groupOf = (position: TicketView['positions'][number]) => (
    <PositionGroup
      key={position.code}
      number={ticket.positions.indexOf(position) + 1}
      ticket={ticket}
      position={position}
      places={placesOf(position.code)}
      open={open}
    />
  );
  const dots = ticket.positions.map(({ code, name, sketchX, sketchY }) => ({
    code,
    name,
    x: sketchX,
    y: sketchY,
    verdict: worstVerdict(placesOf(code)),
  }));
  return (
    <section aria-labelledby="the-places" className={classes.panel}>
      <h2 id="the-places">
        The places <span className="soft">{`${recorded} of ${count(ticket.places.length, 'place')} looked at`}</span>
      </h2>
      {ticket.sketch ? <LineSketch outline={ticket.sketch} dots={dots} onPick={goTo} /> : null}
      <ol>{here.map(groupOf)}</ol>
      {folded.length > 0 ? (
        <details>
          <summary>{count(folded.length, 'position')} without work</summary>
          <ol>{folded.map(groupOf)}</ol>
        </details>
      ) : null}
      <LeaveOutRest ticket={ticket} />
      {mayMend ? (
        <Button onClick={() => setMending(!mending)}>{mending ? 'Done mending' : 'Mend what was found'}</Button>
      ) : null}
    </section>
  );
}

function goTo(code: string): void {
  const group = document.getElementById(`position-${code}`);
  const fold = group?.closest('details');
  if (fold) fold.open = true;
  group?.scrollIntoView({ block: 'start' });
  group?.querySelector<HTMLElement>('input')?.focus();
}
