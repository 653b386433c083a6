import { Button, Modal, NativeSelect, Textarea } from '@mantine/core';
import { useState } from 'react';
import type { LineSummary } from '../../../../../libs/contracts';
import { readPastedRules } from './paste-rules';
import type { TypedRule } from './typed-rule';
import classes from './bulletins.module.css';

interface PasteDialogProps {
  lines: readonly LineSummary[];
  onClose: () => void;
  onRules: (rules: Omit<TypedRule, 'key'>[]) => void;
}

/** Rules from a table copied out of a spreadsheet. */
export function PasteDialog({ lines, onClose, onRules }: PasteDialogProps) {
  const [line, setLine] = useState('');
  const [text, setText] = useState('');
  const read = readPastedRules(text);
  const take = () => {
    if (read.ok) onRules(read.rules.map((rule) => ({ ...rule, line })));
  };
  return (
    <Modal opened onClose={onClose} title="Paste rules from a table" size="xl">
      <NativeSelect label="Product line" value={line} onChange={(event) => setLine(event.currentTarget.value)}>
        <option value="">Pick the line</option>
        {lines.map(({ code, name, maker }) => (
          <option key={code} value={code}>{`${maker.name} ${name}`}</option>
        ))}
      </NativeSelect>
      <Textarea
        label="The table, headings first"
        description="Columns: position, model, from, until, required, allowed, barred, reason, action. Positions by their codes; days as 2017-03-14, both included."
        rows={8}
        className={classes.numbers}
        value={text}
        onChange={(event) => setText(event.currentTarget.value)}
      />
      {text.trim() !== '' && !read.ok ? (
        <ul role="alert">
          {read.problems.map((problem) => (
            <li key={problem}>{problem}</li>
          ))}
        </ul>
      ) : null}
      <div className={classes.acts}>
        <Button onClick={onClose}>Leave it</Button>
        <Button variant="filled" disabled={!read.ok || line === ''} onClick={take}>
          {read.ok ? `Take in ${read.rules.length}` : 'Take them in'}
        </Button>
      </div>
    </Modal>
  );
}
