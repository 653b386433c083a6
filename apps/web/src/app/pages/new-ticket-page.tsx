import { NewTicketForm } from '../../features/new-ticket/new-ticket-form';

/** A unit comes in. */
export function NewTicketPage() {
  return (
    <>
      <h1>Take a unit in</h1>
      <NewTicketForm />
    </>
  );
}
