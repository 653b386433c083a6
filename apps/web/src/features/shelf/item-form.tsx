import { Button, TextInput } from '@mantine/core';
import { useState, type FormEvent } from 'react';
import { setShelfItem, type ShelfItemDetail } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { useSetShelfItem } from './shelf-query';
import { numberOrNull } from './typed-number';
import classes from './shelf.module.css';

/** Where it lies, when it is ordered, how many at once and from whom. */
export function ItemForm({ item }: { item: ShelfItemDetail }) {
  const [typed, setTyped] = useState({
    bin: item.bin,
    reorderPoint: String(item.reorderPoint ?? ''),
    orderQuantity: String(item.orderQuantity ?? ''),
    packSize: String(item.packSize),
    supplier: item.supplier,
  });
  const keep = useSetShelfItem(item);
  const read = setShelfItem.safeParse({
    bin: typed.bin,
    supplier: typed.supplier,
    reorderPoint: numberOrNull(typed.reorderPoint),
    orderQuantity: numberOrNull(typed.orderQuantity),
    packSize: numberOrNull(typed.packSize) ?? NaN,
  });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (read.success) keep.mutate(read.data);
  };
  const field = (name: keyof typeof typed, label: string, numeric: boolean) => (
    <TextInput
      label={label}
      value={typed[name]}
      inputMode={numeric ? 'numeric' : 'text'}
      onChange={(event) => setTyped({ ...typed, [name]: event.currentTarget.value })}
    />
  );
  return (
    <form onSubmit={submit}>
      <h2>Bin and ordering</h2>
      <div className={classes.fields}>
        {field('bin', 'Bin', false)}
        {field('reorderPoint', 'Order when so many are left', true)}
        {field('orderQuantity', 'How many at once', true)}
        {field('packSize', 'Pieces in a bag', true)}
        {field('supplier', 'Supplier', false)}
        <Button type="submit" loading={keep.isPending} disabled={!read.success}>
          Keep it
        </Button>
      </div>
      {read.success ? null : <p role="status">Numbers are whole; a field left empty means none.</p>}
      <ActProblem error={keep.error} />
    </form>
  );
}
