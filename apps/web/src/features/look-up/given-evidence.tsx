import { Button } from '@mantine/core';
import type { LookUpRequest } from '../../../../../libs/contracts';
import { evidenceWords } from '../../lib/evidence-words';
import classes from './look-up.module.css';

interface GivenEvidenceProps {
  evidence: LookUpRequest['evidence'];
  onRemove: (at: number) => void;
}

/** What was read off the machine at the counter; a piece that was misread is taken out again. */
export function GivenEvidence({ evidence, onRemove }: GivenEvidenceProps) {
  return (
    <ul>
      {evidence.map((piece, at) => (
        <li key={`${at}-${piece.kind}`} className={classes.given}>
          <span>
            <strong>{evidenceWords(piece.kind)}:</strong> {saidOf(piece)}
          </span>
          <Button
            variant="subtle"
            px="xs"
            onClick={() => onRemove(at)}
            aria-label={`Take out ${evidenceWords(piece.kind)}`}
          >
            Take out
          </Button>
        </li>
      ))}
    </ul>
  );
}

function saidOf({ kind: _kind, ...data }: LookUpRequest['evidence'][number]): string {
  return Object.values(data)
    .filter((value) => typeof value === 'string')
    .join(', ');
}
