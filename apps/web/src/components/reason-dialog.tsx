import { Button, Modal, Textarea } from '@mantine/core';
import { useState, type FormEvent, type ReactNode } from 'react';
import { ActProblem } from './act-problem';
import classes from './reason-dialog.module.css';

interface ReasonDialogProps {
  title: string;
  /** the words on the button that does it */
  act: string;
  label?: string;
  open: boolean;
  onClose: () => void;
  onReason: (reason: string) => void;
  busy?: boolean;
  error?: unknown;
  danger?: boolean;
  children?: ReactNode;
}

/** Asks for a reason before something is done; nothing happens without one of at least three letters. */
export function ReasonDialog(props: ReasonDialogProps) {
  const [reason, setReason] = useState('');
  const tooShort = reason.trim().length < 3;
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (!tooShort) props.onReason(reason.trim());
  };
  return (
    <Modal opened={props.open} onClose={props.onClose} title={props.title}>
      <form onSubmit={submit}>
        {props.children}
        <Textarea
          label={props.label ?? 'Reason'}
          description="It stays on record."
          value={reason}
          onChange={(event) => setReason(event.currentTarget.value)}
          minRows={3}
          required
          data-autofocus
        />
        <ActProblem error={props.error} />
        <div className={classes.acts}>
          <Button onClick={props.onClose}>Leave it</Button>
          <Button
            type="submit"
            variant="filled"
            color={props.danger ? 'danger' : undefined}
            loading={props.busy}
            disabled={tooShort}
          >
            {props.act}
          </Button>
        </div>
      </form>
    </Modal>
  );
}
