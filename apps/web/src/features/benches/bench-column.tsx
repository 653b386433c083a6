import { useRef } from 'react';
import type { BenchLists } from '../../../../../libs/contracts';
import { LoadBar } from '../../components/load-bar';
import { useDrop } from '../../lib/drag';
import { useMay } from '../../lib/session';
import { BenchDay } from './bench-day';
import type { BenchMove } from './bench-lists-query';
import { BenchRow } from './bench-row';
import { benchOf, type Column } from './where';
import classes from './benches.module.css';

interface BenchColumnProps {
  lists: BenchLists;
  bench: Column;
  /** null for those who may only look */
  onMove: ((move: BenchMove) => void) | null;
}

/** One bench: its load against the day, and its list in order. What falls on it comes last. */
export function BenchColumn({ lists, bench, onMove }: BenchColumnProps) {
  const column = useRef<HTMLElement>(null);
  const dropAtEnd = (id: number) => onMove?.({ id, from: benchOf(lists, id), to: bench.id, before: null });
  const over = useDrop(column, 'bench-ticket', onMove ? dropAtEnd : null);
  const heading = `bench-${bench.id ?? 'none'}`;
  const mayChange = useMay('change-benches');
  const rows = bench.tickets.map((ticket) => (
    <BenchRow key={ticket.id} lists={lists} column={bench} ticket={ticket} onMove={onMove} />
  ));
  return (
    <section ref={column} aria-labelledby={heading} className={classes.column} data-over={over !== null}>
      <h2 id={heading} className={classes.bench}>
        <span>
          {bench.code ? <span className="num">{bench.code}</span> : null} {bench.name}
        </span>
        <span className="num">{bench.tickets.length}</span>
      </h2>
      {bench.load ? <LoadBar load={bench.load} /> : null}
      {bench.id !== null && mayChange ? (
        <BenchDay id={bench.id} version={bench.version} dayMinutes={bench.load.dayMinutes} />
      ) : null}
      {bench.tickets.length === 0 ? <p className="soft">Nothing here.</p> : null}
      {bench.id === null ? <ul>{rows}</ul> : <ol>{rows}</ol>}
    </section>
  );
}
