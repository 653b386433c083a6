import { Button, NativeSelect } from '@mantine/core';
import { useQuery, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import type { SheetView } from '../../../../../libs/contracts';
import type { SheetKind } from '../../../../../libs/sheets';
import { ActProblem } from '../../components/act-problem';
import { QueryView } from '../../components/query-view';
import { count, sayNumber } from '../../lib/say';
import { ColumnChoice } from './column-choice';
import { DropFile } from './drop-file';
import { DryRun, ImportDone } from './dry-run';
import { KindPanel } from './kind-panel';
import { ENCODING_WORDS } from './kind-words';
import { sheetQuery, useBringSheet } from './sheet-query';
import classes from './in-and-out.module.css';

/** Choose the kind, drop a file, choose its columns, look at what it would change, import it. */
export function BringIn() {
  const [kind, setKind] = useState<SheetKind>('makers');
  const [file, setFile] = useState<File | null>(null);
  const [id, setId] = useState<number | null>(null);
  const bring = useBringSheet();
  const client = useQueryClient();
  const take = (chosen: File, encoding?: string) => {
    setFile(chosen);
    setId(null);
    bring.mutate(
      { kind, file: chosen, encoding },
      {
        onSuccess: (sheet) => {
          client.setQueryData(sheetQuery(sheet.id).queryKey, sheet);
          setId(sheet.id);
        },
      },
    );
  };
  const another = (next: SheetKind) => {
    setKind(next);
    setId(null);
    bring.reset();
  };
  return (
    <section aria-labelledby="bring-in">
      <h2 id="bring-in">1. Bring a spreadsheet in</h2>
      <KindPanel kind={kind} onKind={another} />
      <DropFile
        what="a spreadsheet (.csv or .xlsx)"
        accept=".csv,.txt,.tsv,.xlsx"
        busy={bring.isPending}
        onFile={take}
      />
      <ActProblem error={bring.error} />
      {id === null ? null : (
        <Brought
          key={id}
          id={id}
          onEncoding={(encoding) => file && take(file, encoding)}
          onAnother={() => another(kind)}
        />
      )}
    </section>
  );
}

interface BroughtProps {
  id: number;
  onEncoding: (encoding: string) => void;
  onAnother: () => void;
}

function Brought({ id, onEncoding, onAnother }: BroughtProps) {
  const sheet = useQuery(sheetQuery(id));
  return (
    <QueryView query={sheet} what="the file">
      {(data) =>
        data.state === 'done' ? (
          <>
            <ImportDone sheet={data} />
            <Button onClick={onAnother}>Bring another file</Button>
          </>
        ) : (
          <>
            <h2 className={classes.part}>2. Which column holds what</h2>
            <HowRead sheet={data} onEncoding={onEncoding} />
            <Progress sheet={data} />
            <ColumnChoice sheet={data} />
            {data.state === 'looked' ? <DryRun sheet={data} /> : null}
          </>
        )
      }
    </QueryView>
  );
}

function HowRead({ sheet, onEncoding }: { sheet: SheetView; onEncoding: (encoding: string) => void }) {
  const delimiter = { ',': 'commas', ';': 'semicolons', '\t': 'tabs' }[sheet.delimiter ?? ''];
  return (
    <div className={classes.hows}>
      <p>
        {`${sheet.fileName}: ${count(sheet.rows, 'row')}${delimiter ? `, parted by ${delimiter}` : ', the first sheet of a workbook'}.`}
        {sheet.encodingCertain
          ? ''
          : ' How its letters are written is a guess: look whether ä, é, ø and the like are right below.'}
      </p>
      {sheet.encoding === null || (sheet.encodingCertain && sheet.encoding === 'utf-8') ? null : (
        <NativeSelect
          label="Letters are written as"
          value={sheet.encoding}
          data={[...ENCODING_WORDS]}
          onChange={(event) => onEncoding(event.currentTarget.value)}
        />
      )}
    </div>
  );
}

function Progress({ sheet: { doing, progress, rows } }: { sheet: SheetView }) {
  if (doing === null) return null;
  return (
    <p role="status" className={classes.progress}>
      {`${doing[0]!.toUpperCase()}${doing.slice(1)}: ${sayNumber(progress)} of ${sayNumber(rows)} rows`}
      <progress max={Math.max(1, rows)} value={progress} aria-label="Rows done" />
    </p>
  );
}
