import { Link } from '@tanstack/react-router';
import type { ShelfItemDetail } from '../../../../../libs/contracts';
import { count, sayInstant, sayInstantDay } from '../../lib/say';
import { useMay } from '../../lib/session';
import { ItemForm } from './item-form';
import { sayOnTheWay } from './say-on-the-way';
import { Said } from '../../components/said';
import classes from './shelf.module.css';

/** One part on the shelf: how many there are and why, who holds them, who waits, what is coming. */
export function ItemView({ item }: { item: ShelfItemDetail }) {
  const maySet = useMay('order-stock');
  return (
    <div className={classes.detail}>
      <dl className={classes.figures}>
        <Figure name="On hand" value={item.onHand} />
        <Figure name="Reserved" value={item.reserved} />
        <Figure name="Free" value={item.free} />
        <Figure name="On the way" value={item.coming} />
        <Figure name="Bin" value={item.bin === '' ? 'none' : item.bin} />
      </dl>
      <Tickets title="Held for" rows={item.holders.map((one) => ({ ...one, note: '' }))} />
      <Tickets
        title="Waiting for it"
        rows={item.waits.map((one) => ({
          ...one,
          note: one.wokenAt === null ? `since ${sayInstantDay(one.since)}` : 'it is here for them',
        }))}
      />
      <Orders orders={item.orders.filter(({ state }) => state === 'open')} />
      {maySet ? <ItemForm key={item.version} item={item} /> : null}
      <h2>Movements</h2>
      <ol className={classes.movements}>
        {item.movements.map(({ id, at, by, sentence, ticket }) => (
          <li key={id}>
            <span className="num">{sayInstant(at)}</span>
            <span>
              <Said>{sentence}</Said>
              {ticket ? (
                <>
                  {' '}
                  <Link to="/tickets/$id" params={{ id: ticket.id }}>
                    To the ticket
                  </Link>
                </>
              ) : null}
            </span>
            <span className="soft">{by ?? ''}</span>
          </li>
        ))}
      </ol>
    </div>
  );
}

function Figure({ name, value }: { name: string; value: number | string }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>{value}</dd>
    </div>
  );
}

interface TicketRow {
  ticketId: number;
  ticket: string;
  pieces: number;
  note: string;
}

function Tickets({ title, rows }: { title: string; rows: readonly TicketRow[] }) {
  if (rows.length === 0) return null;
  return (
    <>
      <h2>{title}</h2>
      <ul className={classes.tickets}>
        {rows.map(({ ticketId, ticket, pieces, note }) => (
          <li key={ticketId}>
            <Link to="/tickets/$id" params={{ id: ticketId }} className="num">
              {ticket}
            </Link>
            <span>
              {count(pieces, 'piece')} {note}
            </span>
          </li>
        ))}
      </ul>
    </>
  );
}

function Orders({ orders }: { orders: ShelfItemDetail['orders'] }) {
  if (orders.length === 0) return null;
  return (
    <>
      <h2>On the way</h2>
      <ul>
        {orders.map((order) => (
          <li key={order.id}>{sayOnTheWay(order)}</li>
        ))}
      </ul>
    </>
  );
}
