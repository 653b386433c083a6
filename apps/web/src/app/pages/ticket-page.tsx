import { useQuery } from '@tanstack/react-query';
import { getRouteApi } from '@tanstack/react-router';
import type { ReactNode } from 'react';
import type { TicketView } from '../../../../../libs/contracts';
import { QueryView } from '../../components/query-view';
import { Section } from '../../components/section';
import { LabourPanel } from '../../features/ticket/labour-panel';
import { NextStepBar } from '../../features/ticket/next-step-bar';
import { PartsPanel } from '../../features/ticket/parts-panel';
import { PhotosPanel } from '../../features/ticket/photos-panel';
import { PlacesPanel } from '../../features/ticket/places-panel';
import { SafetyPanel } from '../../features/ticket/safety-panel';
import { StageStrip } from '../../features/ticket/stage-strip';
import { TagHead } from '../../features/ticket/tag-head';
import { TicketFlags } from '../../features/ticket/ticket-flags';
import { TicketHistory } from '../../features/ticket/ticket-history';
import { TicketNotices } from '../../features/ticket/ticket-notices';
import { ticketQuery } from '../../features/ticket/ticket-query';
import { UnitPanel } from '../../features/ticket/unit-panel';
import { count } from '../../lib/say';
import classes from './ticket-page.module.css';

const route = getRouteApi('/tickets/$id');

/** The whole line of one ticket on one page, its present stage open. */
export function TicketPage() {
  const { id } = route.useParams();
  const ticket = useQuery(ticketQuery(id));
  return (
    <QueryView query={ticket} what="the ticket">
      {(data) => <TicketLine ticket={data} />}
    </QueryView>
  );
}

function TicketLine({ ticket }: { ticket: TicketView }) {
  return (
    <div className={classes.ticket}>
      <TagHead ticket={ticket} />
      <TicketNotices ticket={ticket} />
      <StageStrip ticket={ticket} />
      <div className={classes.columns}>
        <UnitPanel ticket={ticket} />
        <div className={classes.work}>
          <Flags ticket={ticket} />
          {orderAt(ticket.stage).map((Part, index) => (
            <Part key={index} ticket={ticket} />
          ))}
          <Section
            title="Photos"
            note={count(ticket.photos.length, 'photo')}
            open={ticket.stage === 'intake' || ticket.photos.length > 0}
          >
            <PhotosPanel ticket={ticket} />
          </Section>
          <Section title="History" note={count(ticket.history.length, 'entry', 'entries')}>
            <TicketHistory ticket={ticket} />
          </Section>
        </div>
      </div>
      <NextStepBar key={ticket.stage} ticket={ticket} />
    </div>
  );
}

type Part = ({ ticket }: { ticket: TicketView }) => ReactNode;

/** What the present stage is about comes first. */
function orderAt(stage: TicketView['stage']): readonly Part[] {
  if (stage === 'parts-selection') return [Parts, Labour, PlacesPanel, Safety];
  if (stage === 'repair') return [Safety, PlacesPanel, Parts, Labour];
  return [PlacesPanel, Parts, Labour, Safety];
}

function Flags({ ticket }: { ticket: TicketView }) {
  const open = ticket.flags.filter(({ state }) => state === 'open').length;
  if (ticket.flags.length === 0) return null;
  return (
    <Section title="Flags" note={open > 0 ? `${open} open` : 'all decided'} open={open > 0}>
      <TicketFlags ticket={ticket} />
    </Section>
  );
}

function Parts({ ticket }: { ticket: TicketView }) {
  const open = ticket.stage === 'parts-selection' || ticket.stage === 'repair';
  return (
    <Section title="Parts selection" note={count(ticket.picks.length, 'pick')} open={open}>
      <PartsPanel ticket={ticket} />
    </Section>
  );
}

function Labour({ ticket }: { ticket: TicketView }) {
  const { authorisation: word, totalMinor } = ticket;
  const beyond = word !== null && word.amountMinor < totalMinor;
  const note = beyond ? 'a new yes is needed' : word ? 'the owner said yes' : 'the owner is not asked yet';
  return (
    <Section title="Estimate and the owner's word" note={note} open={ticket.stage === 'parts-selection'}>
      <LabourPanel ticket={ticket} />
    </Section>
  );
}

function Safety({ ticket }: { ticket: TicketView }) {
  const ticked = ticket.safety.filter((point) => point.ticked).length;
  const note = `${ticked} of ${ticket.safety.length} ticked`;
  return (
    <Section title="Safety checklist" note={note} open={ticket.stage === 'repair'}>
      <SafetyPanel ticket={ticket} />
    </Section>
  );
}
