import { NativeSelect } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { ActProblem } from '../../components/act-problem';
import { DayField } from '../../components/day-field';
import type { ChangeTag, TicketView } from '../../../../../libs/contracts';
import { unitName } from '../../../../../libs/papers';
import { benchesQuery } from '../../lib/catalogue-queries';
import { sayInstantDay } from '../../lib/say';
import { useMay } from '../../lib/session';
import { useSettled } from '../../lib/use-settled';
import { TicketActs } from './ticket-acts';
import { useTicketAct } from './ticket-query';
import classes from './tag-head.module.css';

/** The tag at the top of the page, as the printed tag has it; bench and promised day can be changed on it. */
export function TagHead({ ticket }: { ticket: TicketView }) {
  const benches = useQuery(benchesQuery);
  const act = useTicketAct(ticket.id);
  const change = (body: ChangeTag) => act.mutate({ method: 'PATCH', path: '', body });
  const { onType: onBench, ...bench } = useSettled(String(ticket.bench?.id ?? ''), act.isPending, (id) =>
    change({ benchId: id === '' ? null : Number(id) }),
  );
  const { onType: onPromised, ...promised } = useSettled(ticket.promisedOn ?? '', act.isPending, (day) =>
    change({ promisedOn: day || null }),
  );
  const mayOpenOwner = useMay('manage-personal-data');
  const closed = ticket.closedAt !== null;
  const { unit, owner } = ticket;
  return (
    <header className={classes.tag}>
      <div className={classes.main}>
        <h1 className={classes.number}>{ticket.number}</h1>
        <p className={classes.unit}>{unitName(unit)}</p>
        <p className={classes.serial}>
          {unit.serial ?? (unit.serialAbsent ? `no serial: ${unit.serialAbsent}` : 'serial not recorded')}
        </p>
        <p className={classes.complaint}>{ticket.complaint || 'No complaint written down.'}</p>
      </div>
      <div>
        <p className={classes.owner}>
          {mayOpenOwner ? (
            <Link to="/owners/$id" params={{ id: owner.id }}>
              {owner.name}
            </Link>
          ) : (
            owner.name
          )}
        </p>
        <p>{owner.phone ? <a href={`tel:${owner.phone}`}>{owner.phone}</a> : <span className="soft">no phone</span>}</p>
        <p className="soft">Taken in {sayInstantDay(ticket.openedAt)}</p>
      </div>
      <div className={classes.fields}>
        <NativeSelect
          label="Bench"
          disabled={closed}
          {...bench}
          onChange={(event) => onBench(event.currentTarget.value)}
        >
          <option value="">No bench yet</option>
          {(benches.data ?? (ticket.bench ? [ticket.bench] : [])).map(({ id, code, name }) => (
            <option key={id} value={id}>{`${code} · ${name}`}</option>
          ))}
        </NativeSelect>
        <DayField label="Promised" disabled={closed} {...promised} onChange={onPromised} />
      </div>
      <TicketActs ticket={ticket} />
      <ActProblem error={act.error} />
    </header>
  );
}
