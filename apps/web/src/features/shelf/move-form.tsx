import { Button, TextInput } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { useRef, useState, type FormEvent } from 'react';
import { ActProblem } from '../../components/act-problem';
import { stockQuery, useMoveStock, type Movement } from './shelf-query';
import { numberOrNull } from './typed-number';
import classes from './shelf.module.css';

type Mode = Movement['act'];
const MODES: { value: Mode; label: string }[] = [
  { value: 'receive', label: 'Receive' },
  { value: 'count', label: 'Count' },
];
const EMPTY = { part: '', many: '1', pack: '', bin: '', reason: '' };

/**
 * Receive or count with a scanner: the number's field has the focus, the scanner's Enter goes on to how many, Enter there
 * keeps it and comes back for the next bag.
 */
export function MoveForm() {
  const [mode, setMode] = useState<Mode>('receive');
  const [typed, setTyped] = useState(EMPTY);
  // The number once it is whole: with the scanner's Enter, or when the field is left.
  const [counted, setCounted] = useState('');
  const part = useRef<HTMLInputElement>(null);
  const many = useRef<HTMLInputElement>(null);
  const move = useMoveStock();
  const set = (change: Partial<typeof typed>) => setTyped((now) => ({ ...now, ...change }));
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (typed.part.trim() === '') return part.current?.focus();
    if (document.activeElement === part.current) return many.current?.select();
    move.mutate(movementOf(mode, typed), {
      onSuccess: () => {
        setCounted('');
        set({ part: '', many: mode === 'receive' ? '1' : '', pack: '' });
        part.current?.focus();
      },
    });
  };
  return (
    <form onSubmit={submit} className={classes.move} aria-label="Receive or count">
      <ModeChoice mode={mode} onMode={setMode} />
      <div className={classes.fields}>
        <TextInput
          ref={part}
          label="Part number (scan it)"
          value={typed.part}
          autoComplete="off"
          autoCapitalize="characters"
          spellCheck={false}
          className={classes.number}
          onBlur={(event) => setCounted(event.currentTarget.value.trim())}
          onChange={(event) => set({ part: event.currentTarget.value })}
        />
        <TextInput
          ref={many}
          label={mode === 'receive' ? 'How many bags or pieces' : 'How many pieces lie there'}
          inputMode="numeric"
          value={typed.many}
          onChange={(event) => set({ many: event.currentTarget.value })}
        />
        <OtherFields mode={mode} typed={typed} set={set} />
        <Button type="submit" variant="filled" loading={move.isPending}>
          {mode === 'receive' ? 'Receive it' : 'Keep the count'}
        </Button>
      </div>
      {mode === 'count' && counted !== '' ? <Seen partText={counted} /> : null}
      <ActProblem error={move.error} />
      {move.data && !move.error ? <p role="status">{move.data.sentence}</p> : null}
    </form>
  );
}

function ModeChoice({ mode, onMode }: { mode: Mode; onMode: (mode: Mode) => void }) {
  return (
    <div role="group" aria-label="What is done" className={classes.modes}>
      {MODES.map(({ value, label }) => (
        <Button
          key={value}
          variant={value === mode ? 'filled' : 'outline'}
          aria-pressed={value === mode}
          onClick={() => onMode(value)}
        >
          {label}
        </Button>
      ))}
    </div>
  );
}

/** What the shelf has before it is counted; the count is made on this. */
function Seen({ partText }: { partText: string }) {
  const { data } = useQuery(stockQuery(partText));
  if (!data) return null;
  const reserved = data.reserved === 0 ? '' : `, ${data.reserved} of them reserved`;
  return (
    <p role="status">
      So far: {data.onHand} of {data.part.number} on hand{reserved}.
    </p>
  );
}

interface OtherFieldsProps {
  mode: Mode;
  typed: typeof EMPTY;
  set: (change: Partial<typeof EMPTY>) => void;
}

/** What a scanner does not say: the bag where its number does not, a count's reason, and the bin. */
function OtherFields({ mode, typed, set }: OtherFieldsProps) {
  const field = (name: keyof typeof EMPTY, label: string, placeholder: string, inputMode: 'numeric' | 'text') => (
    <TextInput
      label={label}
      placeholder={placeholder}
      inputMode={inputMode}
      value={typed[name]}
      onChange={(event) => set({ [name]: event.currentTarget.value })}
    />
  );
  return (
    <>
      {mode === 'receive'
        ? field('pack', 'Pieces in a bag', 'as the number says', 'numeric')
        : field('reason', 'Reason', 'such as: monthly count', 'text')}
      {field('bin', 'Bin', 'as it is', 'text')}
    </>
  );
}

function movementOf(mode: Mode, { part, many, pack, bin, reason }: typeof EMPTY): Movement {
  const common = { partText: part.trim(), bin: bin.trim() === '' ? null : bin.trim() };
  const howMany = numberOrNull(many) ?? NaN;
  if (mode === 'count') return { act: 'count', body: { ...common, pieces: howMany, reason: reason.trim() } };
  const received = { quantity: howMany, packSize: numberOrNull(pack), orderId: null, note: '' };
  return { act: 'receive', body: { ...common, ...received } };
}
