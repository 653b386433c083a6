import { Button } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import { QueryView } from '../../components/query-view';
import { HandoverSheet } from '../../features/sheet/handover-sheet';
import { ticketQuery } from '../../features/ticket/ticket-query';

const route = getRouteApi('/tickets/$id/sheet');

/** The sheet for the owner, as it is printed. */
export function HandoverSheetPage() {
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
            <Button component="a" href={`/api/tickets/${id}/sheet.pdf`} target="_blank" rel="noopener" variant="filled">
              Open the sheet as a PDF
            </Button>
            <Button onClick={() => window.print()}>Print this page</Button>
          </p>
          <HandoverSheet ticket={data} />
        </>
      )}
    </QueryView>
  );
}
