import { Button, Menu } from '@mantine/core';
import { Link } from '@tanstack/react-router';
import type { BenchLists, BenchTicket } from '../../../../../libs/contracts';
import { Promised } from '../../components/promised';
import { useDrag, useDrop } from '../../lib/drag';
import { sayMinutes } from '../../lib/minutes';
import { count, STAGE_WORDS } from '../../lib/say';
import type { BenchMove } from './bench-lists-query';
import { beforeWhenDown, beforeWhenUp, benchOf, nextOf, type Column } from './where';
import classes from './benches.module.css';

interface BenchRowProps {
  lists: BenchLists;
  column: Column;
  ticket: BenchTicket;
  onMove: ((move: BenchMove) => void) | null;
}

/** A ticket on a bench: dragged, or moved by its buttons; what falls on its upper half comes before it. */
export function BenchRow({ lists, column, ticket, onMove }: BenchRowProps) {
  const row = useDrag<HTMLLIElement>('bench-ticket', ticket.id, onMove !== null);
  const drop = (id: number, half: 'upper' | 'lower') => {
    if (id === ticket.id) return;
    const before = column.id === null ? null : half === 'upper' ? ticket.id : nextOf(column, ticket.id);
    if (before !== id) onMove?.({ id, from: benchOf(lists, id), to: column.id, before });
  };
  const over = useDrop(row, 'bench-ticket', onMove ? drop : null);
  return (
    <li ref={row} id={`bench-ticket-${ticket.id}`} tabIndex={-1} className={classes.row} data-over={over ?? undefined}>
      <div className={classes.words}>
        <p className={classes.top}>
          <Link to="/tickets/$id" params={{ id: ticket.id }} className={classes.number}>
            {ticket.number}
          </Link>
          <span className="soft">{ticket.labourMinutes > 0 ? sayMinutes(ticket.labourMinutes) : 'no time yet'}</span>
        </p>
        <p>
          <strong>{ticket.unit}</strong>
        </p>
        <p>
          {ticket.owner}, {STAGE_WORDS[ticket.stage].toLowerCase()}
          {ticket.openFlags > 0 ? `, ${count(ticket.openFlags, 'flag')}` : ''}
        </p>
        <p>
          <Promised on={ticket.promisedOn} today={lists.today} />
        </p>
        {ticket.onHold !== null ? <p className={classes.hold}>On hold: {ticket.onHold}</p> : null}
      </div>
      {onMove ? <Moves lists={lists} column={column} ticket={ticket} onMove={onMove} /> : null}
    </li>
  );
}

type MovesProps = BenchRowProps & { onMove: (move: BenchMove) => void };

/** Up, down, and anywhere else: everything that dragging does, by buttons. */
function Moves({ lists, column, ticket, onMove }: MovesProps) {
  const { id, number } = ticket;
  const up = column.id === null ? undefined : beforeWhenUp(column, id);
  const down = column.id === null ? undefined : beforeWhenDown(column, id);
  const step = (before: number | null | undefined) => {
    if (before !== undefined) onMove({ id, from: column.id, to: column.id, before });
  };
  return (
    <div className={classes.moves}>
      {column.id === null ? null : (
        <div className={classes.steps}>
          <Button
            className={classes.step}
            aria-label={`${number} up`}
            disabled={up === undefined}
            onClick={() => step(up)}
          >
            ↑
          </Button>
          <Button
            className={classes.step}
            aria-label={`${number} down`}
            disabled={down === undefined}
            onClick={() => step(down)}
          >
            ↓
          </Button>
        </div>
      )}
      <Menu>
        <Menu.Target>
          <Button aria-label={`Move ${number}`}>Move</Button>
        </Menu.Target>
        <Menu.Dropdown>
          {up === undefined ? null : (
            <Menu.Item className={classes.item} onClick={() => step(column.tickets[0]!.id)}>
              To the top of {column.code}
            </Menu.Item>
          )}
          {lists.benches
            .filter((bench) => bench.id !== column.id)
            .map((bench) => (
              <Menu.Item
                className={classes.item}
                key={bench.id}
                onClick={() => onMove({ id, from: column.id, to: bench.id, before: null })}
              >
                {`To ${bench.code} · ${bench.name}`}
              </Menu.Item>
            ))}
          {column.id === null ? null : (
            <Menu.Item className={classes.item} onClick={() => onMove({ id, from: column.id, to: null, before: null })}>
              Off the benches
            </Menu.Item>
          )}
        </Menu.Dropdown>
      </Menu>
    </div>
  );
}
