import { Button, TextInput } from '@mantine/core';
import { useState } from 'react';
import type { OrderLine, OrderList } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { DayField } from '../../components/day-field';
import { EmptyView } from '../../components/empty-view';
import { PartNumber } from '../../components/part-number';
import { address } from '../../lib/api-client';
import { useMay } from '../../lib/session';
import { sayOnTheWay } from './say-on-the-way';
import { useOrderAct } from './shelf-query';
import classes from './shelf.module.css';

/** What to order, supplier by supplier, and what is on its way. */
export function OrdersView({ orders: { lines, open } }: { orders: OrderList }) {
  const suppliers = [...new Set(lines.map(({ supplier }) => supplier))];
  return (
    <>
      {lines.length === 0 ? (
        <EmptyView title="Nothing needs ordering">
          <p>Everything lies above its reorder point, and no ticket waits for what is not on its way.</p>
        </EmptyView>
      ) : (
        <p>
          <a href={address('/shelf/orders/list.csv')} download className={classes.csv}>
            The list as CSV
          </a>
        </p>
      )}
      {suppliers.map((supplier) => {
        const own = lines.filter((line) => line.supplier === supplier);
        const key = own.map(({ itemId, order }) => `${itemId}:${order}`).join(' ');
        return <SupplierList key={`${supplier} ${key}`} supplier={supplier} lines={own} />;
      })}
      <OnTheWay open={open} />
    </>
  );
}

function SupplierList({ supplier, lines }: { supplier: string; lines: readonly OrderLine[] }) {
  const [many, setMany] = useState(() => new Map(lines.map(({ itemId, order }) => [itemId, String(order)])));
  const [expectedOn, setExpectedOn] = useState('');
  const act = useOrderAct();
  const mayOrder = useMay('order-stock');
  const wanted = lines.flatMap(({ itemId }) => {
    const text = many.get(itemId) ?? '';
    return /^[1-9]\d*$/.test(text.trim()) ? [{ itemId, pieces: Number(text) }] : [];
  });
  const name = supplier === '' ? 'No supplier named' : supplier;
  return (
    <section>
      <h2>{name}</h2>
      <ul>
        {lines.map((line) => (
          <li key={line.itemId} className={classes.line}>
            <span className={classes.part}>
              <PartNumber number={line.part.number} name={line.part.name} />
            </span>
            <span className="soft">{whyOrder(line)}</span>
            {mayOrder ? (
              <TextInput
                aria-label={`Pieces of ${line.part.number} to order`}
                inputMode="numeric"
                className={classes.many}
                value={many.get(line.itemId) ?? ''}
                onChange={(event) => setMany(new Map(many).set(line.itemId, event.currentTarget.value))}
              />
            ) : (
              <span className="num">{line.order}</span>
            )}
          </li>
        ))}
      </ul>
      {mayOrder ? (
        <div className={classes.fields}>
          <DayField label="Expected on" value={expectedOn} onChange={setExpectedOn} />
          <Button
            variant="filled"
            loading={act.isPending}
            disabled={wanted.length === 0}
            onClick={() =>
              act.mutate({ act: 'place', expectedOn: expectedOn === '' ? null : expectedOn, lines: wanted })
            }
          >
            Ordered from {name}
          </Button>
        </div>
      ) : null}
      <ActProblem error={act.error} />
    </section>
  );
}

function whyOrder({ free, coming, waited, reorderPoint, packSize }: OrderLine): string {
  return [
    `${free} free`,
    coming > 0 ? `${coming} on the way` : null,
    reorderPoint === null ? null : `ordered at ${reorderPoint}`,
    waited > 0 ? `${waited} waited for` : null,
    packSize > 1 ? `bags of ${packSize}` : null,
  ]
    .filter((one) => one !== null)
    .join(', ');
}

function OnTheWay({ open }: Pick<OrderList, 'open'>) {
  const act = useOrderAct();
  const mayOrder = useMay('order-stock');
  if (open.length === 0) return null;
  return (
    <section>
      <h2>On the way</h2>
      <ul>
        {open.map(({ id, part, version, ...order }) => (
          <li key={id} className={classes.line}>
            <span className={classes.part}>
              <PartNumber number={part.number} name={part.name} />
            </span>
            <span>{sayOnTheWay(order)}</span>
            {mayOrder ? (
              <Button
                variant="subtle"
                loading={act.isPending}
                onClick={() => act.mutate({ act: 'cancel', id, version })}
                aria-label={`${part.number} will not come`}
              >
                Will not come
              </Button>
            ) : null}
          </li>
        ))}
      </ul>
      <ActProblem error={act.error} />
    </section>
  );
}
