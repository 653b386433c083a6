import { Button, TextInput } from '@mantine/core';
import { useState, type FormEvent } from 'react';
import type { Part } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { PartNumber } from '../../components/part-number';
import { useTradeNumberAct } from './parts-query';
import classes from './parts.module.css';

interface PartRowProps {
  part: Part;
  may: boolean;
  /** a number that was scanned and leads nowhere yet */
  offered: string;
  /** that number leads to this part now */
  onWritten: (part: string) => void;
}

/** One part of the catalogue with the numbers its bags carry. */
export function PartRow({ part, may, offered, onWritten }: PartRowProps) {
  const act = useTradeNumberAct(part.id);
  return (
    <li className={classes.part}>
      <p className={classes.head}>
        <PartNumber number={part.number} name={part.name} />
        <span className="soft">{part.maker}</span>
      </p>
      {part.tradeNumbers.length === 0 ? <p className="soft">No bar code written down.</p> : null}
      <ul className={classes.numbers}>
        {part.tradeNumbers.map(({ number, pack }) => (
          <li key={number}>
            <span className="num">{number}</span> {pack === 1 ? 'one piece' : `bag of ${pack}`}
            {may ? (
              <Button
                variant="subtle"
                px="xs"
                aria-label={`Take ${number} away from ${part.number}`}
                loading={act.isPending}
                onClick={() => act.mutate({ remove: number })}
              >
                Take away
              </Button>
            ) : null}
          </li>
        ))}
      </ul>
      {may ? <NumberForm key={offered} part={part} act={act} offered={offered} onWritten={onWritten} /> : null}
      <ActProblem error={act.error} />
    </li>
  );
}

interface NumberFormProps {
  part: Part;
  act: ReturnType<typeof useTradeNumberAct>;
  offered: string;
  onWritten: (part: string) => void;
}

function NumberForm({ part, act, offered, onWritten }: NumberFormProps) {
  const [typed, setTyped] = useState({ number: offered, pack: '1' });
  const pack = /^\d{1,5}$/.test(typed.pack.trim()) ? Number(typed.pack) : 0;
  const isPack = pack >= 1 && pack <= 10_000;
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (!isPack) return;
    const add = { number: typed.number.trim(), pack };
    const done = () => {
      setTyped({ number: '', pack: '1' });
      if (add.number === offered) onWritten(part.number);
    };
    act.mutate({ add }, { onSuccess: done });
  };
  return (
    <form onSubmit={submit} className={classes.form}>
      <TextInput
        label="Digits under the bar code"
        aria-label={`Digits under the bar code of ${part.number}`}
        value={typed.number}
        autoComplete="off"
        spellCheck={false}
        onChange={(event) => setTyped({ ...typed, number: event.currentTarget.value })}
      />
      <TextInput
        label="Pieces in the bag"
        aria-label={`Pieces in the bag of ${part.number}`}
        inputMode="numeric"
        className={classes.pack}
        error={isPack ? null : 'Write 1 to 10000.'}
        value={typed.pack}
        onChange={(event) => setTyped({ ...typed, pack: event.currentTarget.value })}
      />
      <Button type="submit" loading={act.isPending} disabled={typed.number.trim() === ''}>
        Write it down
      </Button>
    </form>
  );
}
