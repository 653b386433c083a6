import { Button } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import { QueryView } from '../../components/query-view';
import { PrintedTag } from '../../features/tag/printed-tag';
import { ticketQuery } from '../../features/ticket/ticket-query';
import classes from './tag-page.module.css';

const route = getRouteApi('/tickets/$id/tag');

/** The tag for the unit, as it is printed. */
export function TagPage() {
  const { id } = route.useParams();
  const ticket = useQuery(ticketQuery(id));
  return (
    <QueryView query={ticket} what="the ticket">
      {(data) => (
        <>
          <p className="no-print bar">
            <Link to="/tickets/$id" params={{ id }}>
              Back to {data.number}
            </Link>
            <Button variant="filled" onClick={() => window.print()}>
              Print the tag
            </Button>
          </p>
          <p className="no-print soft">
            For a label of 100 × 60 mm: print at 100 %, without margins. Scanned into the search field, the code opens
            the ticket.
          </p>
          <div className={classes.room} role="region" aria-label="The tag" tabIndex={0}>
            <PrintedTag ticket={data} />
          </div>
        </>
      )}
    </QueryView>
  );
}
