import { Button } from '@mantine/core';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import type { RulebookImported } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { address } from '../../lib/api-client';
import { DropFile } from './drop-file';
import { useBringRulebook } from './sheet-query';
import classes from './in-and-out.module.css';

/** The whole rulebook in one open file: out, and in again without loss. */
export function RulebookFile() {
  const [file, setFile] = useState<File | null>(null);
  const look = useBringRulebook();
  const bring = useBringRulebook();
  const take = (chosen: File) => {
    setFile(chosen);
    bring.reset();
    look.mutate({ file: chosen, dryRun: true });
  };
  const changes = look.data ? countOf(look.data) : 0;
  return (
    <section aria-labelledby="rulebook-file" className={classes.part}>
      <h2 id="rulebook-file">The rulebook as one file</h2>
      <p>
        {'Makers, lines, parts, serial schemes, papers and every version of every rule, with no owner in it: '}
        <a href={address('/rulebook-file')} download>
          save it
        </a>
        . It can be handed to another shop, and the command line judges by it.
      </p>
      <DropFile what="a rulebook file (.json)" accept=".json" busy={look.isPending} onFile={take} />
      <ActProblem error={look.error} />
      {look.data && !bring.data ? (
        <>
          <Changes imported={look.data} says="would be" />
          <Button
            variant="filled"
            disabled={changes === 0}
            loading={bring.isPending}
            onClick={() => file && bring.mutate({ file, dryRun: false })}
          >
            {changes === 0 ? 'Nothing in it is new' : `Bring ${file?.name ?? 'it'} in`}
          </Button>
          <ActProblem error={bring.error} />
        </>
      ) : null}
      {bring.data ? (
        <div role="status">
          <Changes imported={bring.data} says="were" />
          {bring.data.recheckId === null ? null : (
            <p>
              Units are being dated and judged by it:{' '}
              <Link to="/rechecks/$id" params={{ id: bring.data.recheckId }}>
                see how far it is
              </Link>
              .
            </p>
          )}
        </div>
      ) : null}
    </section>
  );
}

const WORDS: Readonly<Record<keyof RulebookImported['counts'], string>> = {
  makers: 'Makers',
  lines: 'Product lines',
  parts: 'Parts',
  serialSchemes: 'Serial schemes',
  standardEditions: 'Editions of standards',
  sources: 'Papers',
  rules: 'Versions of rules',
  supersessions: 'Supersessions',
};

function countOf({ counts }: RulebookImported): number {
  return Object.values(counts).reduce((sum, { added, changed }) => sum + added + changed, 0);
}

function Changes({ imported, says }: { imported: RulebookImported; says: string }) {
  return (
    <ul className={classes.changes}>
      {(Object.keys(WORDS) as (keyof typeof WORDS)[]).map((list) => {
        const { added, changed, same } = imported.counts[list];
        return (
          <li key={list}>{`${WORDS[list]}: ${added} ${says} added, ${changed} changed, ${same} are there already`}</li>
        );
      })}
    </ul>
  );
}
