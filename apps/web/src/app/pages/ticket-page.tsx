import { useQuery } from '@tanstack/react-query';
import { getRouteApi } from '@tanstack/react-router';
import type { TicketView } from '../../../../../libs/contracts';
import { QueryView } from '../../components/query-view';
import { Section } from '../../components/section';
import { LabourPanel } from '../../features/ticket/labour-panel';
import { NextStepBar } from '../../features/ticket/next-step-bar';
import { PartsPanel } from '../../features/ticket/parts-panel';
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
  const openFlags = ticket.flags.filter(({ state }) => state === 'open').length;
  const ticked = ticket.safety.filter((point) => point.ticked).length;
  return (
    <div className={classes.ticket}>
      <TagHead ticket={ticket} />
      <TicketNotices ticket={ticket} />
      <StageStrip ticket={ticket} />
      <div className={classes.columns}>
        <UnitPanel ticket={ticket} />
        <div className={classes.work}>
          {ticket.flags.length > 0 ? (
            <Section title="Flags" note={openFlags > 0 ? `${openFlags} open` : 'all decided'} open={openFlags > 0}>
              <TicketFlags ticket={ticket} />
            </Section>
          ) : null}
          {ticket.stage === 'repair' ? <Safety ticket={ticket} ticked={ticked} open /> : null}
          <PlacesPanel ticket={ticket} />
          <Section
            title="Parts selection"
            note={count(ticket.picks.length, 'pick')}
            open={ticket.stage === 'parts-selection' || ticket.stage === 'repair'}
          >
            <PartsPanel ticket={ticket} />
          </Section>
          <Section
            id="owners-word"
            title="Labour and the owner's word"
            note={ticket.authorisation ? 'the owner said yes' : 'the owner is not asked yet'}
            open={ticket.stage === 'parts-selection'}
          >
            <LabourPanel ticket={ticket} />
          </Section>
          {ticket.stage === 'repair' ? null : <Safety ticket={ticket} ticked={ticked} open={false} />}
          <Section title="History" note={count(ticket.history.length, 'entry', 'entries')}>
            <TicketHistory ticket={ticket} />
          </Section>
        </div>
      </div>
      <NextStepBar ticket={ticket} />
    </div>
  );
}

function Safety({ ticket, ticked, open }: { ticket: TicketView; ticked: number; open: boolean }) {
  return (
    <Section title="Safety checklist" note={`${ticked} of ${ticket.safety.length} ticked`} open={open}>
      <SafetyPanel ticket={ticket} />
    </Section>
  );
}
