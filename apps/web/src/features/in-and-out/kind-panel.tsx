import { NativeSelect } from '@mantine/core';
import { KINDS, SHEET_KINDS, type SheetKind } from '../../../../../libs/sheets';
import { address } from '../../lib/api-client';
import { KIND_WORDS } from './kind-words';
import classes from './in-and-out.module.css';

interface KindPanelProps {
  kind: SheetKind;
  onKind: (kind: SheetKind) => void;
}

/** Which kind of spreadsheet it is, what a row of it is, and an empty one to fill in. */
export function KindPanel({ kind, onKind }: KindPanelProps) {
  const { needs } = KIND_WORDS[kind];
  return (
    <div className={classes.kind}>
      <NativeSelect
        label="What is in the spreadsheet"
        value={kind}
        data={SHEET_KINDS.map((value, at) => ({ value, label: `${at + 1}. ${KIND_WORDS[value].title}` }))}
        onChange={(event) => onKind(event.currentTarget.value as SheetKind)}
      />
      <p>
        {`Each row is ${KINDS[kind].about[0]!.toLowerCase()}${KINDS[kind].about.slice(1)} ${needs}`}
        <br />
        <span className="soft">No spreadsheet yet? Fill in an empty one, with a worked line: </span>
        <a href={address(`/sheets/templates/${kind}`, { format: 'xlsx' })} download>
          as a workbook
        </a>
        {' or '}
        <a href={address(`/sheets/templates/${kind}`)} download>
          as CSV
        </a>
        .
      </p>
    </div>
  );
}
