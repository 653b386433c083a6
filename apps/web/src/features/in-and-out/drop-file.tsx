import { useId, useState, type DragEvent } from 'react';
import classes from './in-and-out.module.css';

interface DropFileProps {
  /** as in 'a spreadsheet (.csv or .xlsx)' */
  what: string;
  accept: string;
  busy: boolean;
  onFile: (file: File) => void;
}

/** A place to drop a file on, or to press to choose one. */
export function DropFile({ what, accept, busy, onFile }: DropFileProps) {
  const id = useId();
  const [over, setOver] = useState(false);
  const take = (files: FileList | null) => {
    const [file] = files ?? [];
    if (file && !busy) onFile(file);
  };
  const drop = (event: DragEvent) => {
    event.preventDefault();
    setOver(false);
    take(event.dataTransfer.files);
  };
  return (
    <label
      htmlFor={id}
      className={classes.drop}
      data-over={over || undefined}
      onDragOver={(event) => (event.preventDefault(), setOver(true))}
      onDragLeave={() => setOver(false)}
      onDrop={drop}
    >
      <strong>{busy ? 'Taking the file in ...' : `Drop ${what} here, or press to choose one`}</strong>
      <input
        id={id}
        type="file"
        accept={accept}
        disabled={busy}
        onChange={(event) => {
          take(event.currentTarget.files);
          event.currentTarget.value = '';
        }}
      />
    </label>
  );
}
