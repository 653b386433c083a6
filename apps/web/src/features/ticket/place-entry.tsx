import { Button, NativeSelect } from '@mantine/core';
import { useState } from 'react';
import { CONDITIONS, type PlaceView, type TicketView } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { ReasonDialog } from '../../components/reason-dialog';
import { todayText } from '../../lib/say';
import { useSettled } from '../../lib/use-settled';
import { EntrySaid } from './entry-said';
import { MarksDialog } from './marks-dialog';
import { NumberField } from './number-field';
import { numberOf, placeRecord, typedNumber, type PlaceRecord, type Side } from './place-record';
import { useTicketAct } from './ticket-query';
import classes from './place-entry.module.css';

interface PlaceEntryProps {
  ticket: TicketView;
  place: PlaceView;
  side: Side;
}

/** Entry of one side of a place, made for a scanner: Enter keeps the number and goes to the next field. */
export function PlaceEntry({ ticket, place, side }: PlaceEntryProps) {
  const record = place[side];
  const act = useTicketAct(ticket.id);
  const [dialog, setDialog] = useState<'marks' | 'leave-out' | null>(null);
  const close = () => setDialog(null);
  const save = (change: Partial<PlaceRecord>) =>
    act.mutate(
      { method: 'PUT', path: '/places', body: { side, places: [placeRecord(place, side, change)] } },
      { onSuccess: close },
    );
  const position = ticket.positions.find(({ code }) => code === place.position)?.name ?? place.position;
  const label = `${position}, ${place.placeName}, ${side === 'found' ? 'as found' : 'as left'}`;
  const leaveOut = (leftOutWhy: string) => save({ ...NOTHING_THERE, leftOutWhy });
  const common = { busy: act.isPending, error: act.error, onClose: close };
  return (
    <div className={classes.entry}>
      <div className={classes.fields}>
        <NumberField
          key={numberOf(record)}
          label={label}
          kept={numberOf(record)}
          draft={`ticket.${ticket.id}.${place.position}.${place.place}.${side}`}
          onKeep={(text) => save(typedNumber(text))}
        />
        <ConditionField
          label={label}
          value={record?.condition ?? null}
          busy={act.isPending}
          onPick={(condition) => save({ condition })}
        />
        <Button variant="subtle" px="xs" onClick={() => setDialog('marks')}>
          No number readable
        </Button>
        <Button variant="subtle" px="xs" onClick={() => setDialog('leave-out')}>
          Leave out
        </Button>
      </div>
      {act.isPending ? <p className="soft">Keeping it …</p> : null}
      <EntrySaid record={record} />
      {dialog === null ? <ActProblem error={act.error} /> : null}
      {dialog === 'marks' ? (
        <MarksDialog
          {...common}
          title={label}
          first={record?.marks ?? null}
          ticketId={ticket.id}
          asked={{ position: place.position, fittedOn: side === 'left' ? todayText() : (record?.fittedOn ?? null) }}
          onKeep={(kept) => save({ ...kept, partText: null })}
        />
      ) : null}
      {dialog === 'leave-out' ? (
        <ReasonDialog {...common} open title={`Leave out: ${label}`} act="Leave it out" onReason={leaveOut} />
      ) : null}
    </div>
  );
}

const NOTHING_THERE = { partText: null, marks: null, pickedCandidate: null, condition: null };

type Condition = PlaceRecord['condition'];

interface ConditionFieldProps {
  label: string;
  value: Condition;
  busy: boolean;
  onPick: (condition: Condition) => void;
}

function ConditionField({ label, value, busy, onPick }: ConditionFieldProps) {
  const { onType, ...field } = useSettled(value ?? '', busy, (text) =>
    onPick(CONDITIONS.find((one) => one === text) ?? null),
  );
  return (
    <NativeSelect
      aria-label={`Condition of ${label}`}
      {...field}
      onChange={(event) => onType(event.currentTarget.value)}
    >
      <option value="">Condition</option>
      {CONDITIONS.map((one) => (
        <option key={one}>{one}</option>
      ))}
    </NativeSelect>
  );
}
