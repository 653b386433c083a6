import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { QueryView } from '../../components/query-view';
import { OrdersView } from '../../features/shelf/orders-view';
import { ordersQuery } from '../../features/shelf/shelf-query';

/** What to order by supplier, and what is on its way. */
export function ShelfOrdersPage() {
  const orders = useQuery(ordersQuery);
  return (
    <>
      <p>
        <Link to="/shelf">The whole shelf</Link>
      </p>
      <h1>What to order</h1>
      <QueryView query={orders} what="the list">
        {(data) => <OrdersView orders={data} />}
      </QueryView>
    </>
  );
}
