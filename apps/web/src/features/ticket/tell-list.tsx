import { Button, TextInput } from '@mantine/core';
import { useState } from 'react';
import type { TellAnswer } from '../../../../../libs/contracts';
import { PartNumber } from '../../components/part-number';
import { VerdictMark } from '../../components/verdict-mark';
import { Said } from '../../components/said';
import classes from './place-entry.module.css';

type Candidate = TellAnswer['candidates'][number];

interface TellListProps {
  answer: TellAnswer;
  busy: boolean;
  onPick: (key: string, toldBy: string | null) => void;
}

/** The parts it can be, best first, each with its verdict; what would tell them apart, and when that is not needed. */
export function TellList({ answer, busy, onPick }: TellListProps) {
  const { candidates, ruledOut, needless, sentences } = answer;
  return (
    <section aria-label="What it can be" aria-live="polite" className={classes.candidates}>
      {needless ? (
        <p>
          <strong>{needless}</strong>
        </p>
      ) : null}
      {sentences.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      <ul>
        {candidates.map((candidate) => (
          <CandidateRow key={candidate.part.key} candidate={candidate} busy={busy} onPick={onPick} />
        ))}
      </ul>
      {ruledOut.length > 0 ? (
        <details>
          <summary>Ruled out: {ruledOut.length}</summary>
          {ruledOut.map(({ part, sentence }) => (
            <p key={part.key}>{sentence}</p>
          ))}
        </details>
      ) : null}
    </section>
  );
}

function CandidateRow({ candidate, busy, onPick }: { candidate: Candidate } & Pick<TellListProps, 'busy' | 'onPick'>) {
  const { part, verdict, sentence, asksHow } = candidate;
  const [how, setHow] = useState<string | null>(null);
  const pick = () => (asksHow && how === null ? setHow('') : onPick(part.key, how?.trim() || null));
  return (
    <li>
      <span>
        {verdict ? <VerdictMark verdict={verdict} /> : null} <PartNumber number={part.number} name={part.name} />
      </span>
      <p className="soft">
        <Said>{sentence}</Said>
      </p>
      {how === null ? null : (
        <TextInput
          label="How was it told?"
          description="Such as the bag it came in, or laid beside a new one."
          value={how}
          data-autofocus
          className={classes.how}
          onChange={(event) => setHow(event.currentTarget.value)}
        />
      )}
      <Button loading={busy} disabled={how !== null && how.trim() === ''} onClick={pick}>
        {how === null ? 'It is this one' : `Keep it as ${part.number}`}
      </Button>
    </li>
  );
}
