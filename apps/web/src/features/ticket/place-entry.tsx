import { Button, NativeSelect, TextInput } from '@mantine/core';
import { useState, type KeyboardEvent } from 'react';
import { CONDITIONS, type PlaceView, type TicketView } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { ReasonDialog } from '../../components/reason-dialog';
import { VerdictWhy } from '../../components/verdict-why';
import { CandidateList } from './candidate-list';
import { MarksDialog } from './marks-dialog';
import { marksWords } from './marks-words';
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
  const save = (change: Partial<PlaceRecord>) =>
    act.mutate(
      { method: 'PUT', path: '/places', body: { side, places: [placeRecord(place, side, change)] } },
      { onSuccess: () => setDialog(null) },
    );
  const label = `${place.placeName}, ${side === 'found' ? 'as found' : 'as left'}`;
  return (
    <div className={classes.entry}>
      <div className={classes.fields}>
        <NumberField
          key={numberOf(record)}
          label={label}
          kept={numberOf(record)}
          onKeep={(text) => save(typedNumber(text))}
        />
        <NativeSelect
          aria-label={`Condition of ${label}`}
          value={record?.condition ?? ''}
          onChange={(event) => save({ condition: CONDITIONS.find((one) => one === event.currentTarget.value) ?? null })}
        >
          <option value="">Condition</option>
          {CONDITIONS.map((one) => (
            <option key={one}>{one}</option>
          ))}
        </NativeSelect>
        <Button variant="subtle" px="xs" onClick={() => setDialog('marks')}>
          No number readable
        </Button>
        <Button variant="subtle" px="xs" onClick={() => setDialog('leave-out')}>
          Leave out
        </Button>
      </div>
      {act.isPending ? <p className="soft">Keeping it …</p> : null}
      {record?.leftOutWhy ? <p>Left out: {record.leftOutWhy}</p> : null}
      {record?.marks ? <p>No number readable; {marksWords(record.marks)}.</p> : null}
      {record?.marks ? <CandidateList side={record} onPick={(key) => save({ pickedCandidate: key })} /> : null}
      {record?.part ? <p className="soft">{record.part.name}</p> : null}
      {record?.verdict ? <VerdictWhy verdict={record.verdict} /> : null}
      <ActProblem error={act.error} />
      {dialog === 'marks' ? (
        <MarksDialog
          title={label}
          first={record?.marks ?? null}
          busy={act.isPending}
          onClose={() => setDialog(null)}
          onMarks={(marks) => save({ marks, partText: null })}
        />
      ) : null}
      {dialog === 'leave-out' ? (
        <ReasonDialog
          open
          title={`Leave out: ${label}`}
          act="Leave it out"
          busy={act.isPending}
          error={act.error}
          onClose={() => setDialog(null)}
          onReason={(leftOutWhy) => save({ leftOutWhy, partText: null, marks: null, condition: null })}
        />
      ) : null}
    </div>
  );
}

function NumberField({ label, kept, onKeep }: { label: string; kept: string; onKeep: (text: string) => void }) {
  const [text, setText] = useState(kept);
  const keep = () => {
    if (text.trim() !== kept) onKeep(text);
  };
  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>) => {
    if (event.key !== 'Enter') return;
    event.preventDefault();
    focusNext(event.currentTarget);
  };
  return (
    <TextInput
      aria-label={label}
      placeholder="Part number"
      data-place-field
      className={classes.number}
      value={text}
      autoComplete="off"
      autoCapitalize="characters"
      spellCheck={false}
      onChange={(event) => setText(event.currentTarget.value)}
      onKeyDown={onKeyDown}
      onBlur={keep}
    />
  );
}

/** Leaving the field keeps it; the last one just lets go. */
function focusNext(field: HTMLInputElement): void {
  const fields = [...document.querySelectorAll<HTMLInputElement>('[data-place-field]')];
  const next = fields[fields.indexOf(field) + 1];
  if (next) next.focus();
  else field.blur();
}
