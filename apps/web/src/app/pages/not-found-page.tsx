import { Link } from '@tanstack/react-router';
import { EmptyView } from '../../components/empty-view';

/** An address that leads nowhere. */
export function NotFoundPage() {
  return (
    <EmptyView title="There is no such page">
      <p>
        Go to the <Link to="/board">job board</Link>, or search for the ticket.
      </p>
    </EmptyView>
  );
}
