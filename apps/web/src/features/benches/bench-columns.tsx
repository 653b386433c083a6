import { useEffect, useState } from 'react';
import type { BenchLists } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { useMay } from '../../lib/session';
import { BenchColumn } from './bench-column';
import { useBenchMove, type BenchMove } from './bench-lists-query';
import { NO_BENCH, sayPlace } from './where';
import classes from './benches.module.css';

/** The benches side by side, each with its list in order, and what is on none. */
export function BenchColumns({ lists }: { lists: BenchLists }) {
  const move = useBenchMove();
  const may = useMay('plan-benches');
  const [moved, setMoved] = useState<{ id: number } | null>(null);
  const send = may
    ? (to: BenchMove) => move.mutate(to, { onSuccess: () => setMoved({ id: to.id }), onError: () => setMoved(null) })
    : null;
  useEffect(() => {
    // The row was drawn anew in another column: whoever works by keys goes on from there.
    if (moved) document.getElementById(`bench-ticket-${moved.id}`)?.focus();
  }, [moved]);
  return (
    <>
      <p className="sr-only" role="status">
        {moved ? sayPlace(lists, moved.id) : ''}
      </p>
      <ActProblem error={move.error} />
      <div className={classes.columns}>
        {lists.benches.map((bench) => (
          <BenchColumn key={bench.id} lists={lists} bench={bench} onMove={send} />
        ))}
        <BenchColumn lists={lists} bench={{ ...NO_BENCH, tickets: lists.unplaced }} onMove={send} />
      </div>
    </>
  );
}
