import type { TicketView } from '../../../../../libs/contracts';
import { sayInstant, sayMoney } from '../../lib/say';
import { useMay } from '../../lib/session';
import { AuthorisationForm } from './authorisation-form';
import { EstimateRevisions } from './estimate-revisions';
import { LabourForm } from './labour-form';

const HOW_WORDS = { 'in-person': 'in person', phone: 'on the phone', email: 'by e-mail', signature: 'by signature' };

/** Labour line by line, the estimate with its revisions, and the owner's word on it. */
export function LabourPanel({ ticket }: { ticket: TicketView }) {
  const mayLabour = useMay('set-labour') && ticket.closedAt === null;
  const mayAsk = useMay('authorise-work') && ticket.closedAt === null;
  return (
    <>
      {mayLabour ? <LabourForm key={JSON.stringify(ticket.labour.lines)} ticket={ticket} /> : null}
      <h3>The estimate</h3>
      <EstimateRevisions ticket={ticket} />
      <h3>The owner&apos;s word</h3>
      <OwnersWord ticket={ticket} />
      {mayAsk ? <AuthorisationForm key={ticket.totalMinor} ticket={ticket} /> : null}
    </>
  );
}

function OwnersWord({ ticket: { authorisation: word, currency, totalMinor } }: { ticket: TicketView }) {
  if (!word) return <p className="soft">Not asked yet.</p>;
  return (
    <p>
      {word.by} said yes {HOW_WORDS[word.how]} to <strong>{sayMoney(word.amountMinor, currency)}</strong>
      {word.revision === null ? '' : ` on revision ${word.revision}`}, {sayInstant(word.at)}
      {word.recordedBy ? `, written down by ${word.recordedBy}` : ''}.
      {word.amountMinor < totalMinor ? <strong> The total is now higher: a new yes is needed.</strong> : null}
    </p>
  );
}
