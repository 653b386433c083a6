import { useState, type ReactNode } from 'react';
import classes from './section.module.css';

interface SectionProps {
  id?: string;
  title: string;
  /** a few words beside the title */
  note?: ReactNode;
  open?: boolean;
  children: ReactNode;
}

/** A part of a page that can be folded; it opens by itself when `open` turns true. */
export function Section({ id, title, note, open = false, children }: SectionProps) {
  const [wanted, setWanted] = useState(open);
  const [isOpen, setOpen] = useState(open);
  if (wanted !== open) {
    setWanted(open);
    setOpen(open);
  }
  return (
    <details id={id} className={classes.section} open={isOpen} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <h2>{title}</h2>
        {note ? <span className="soft">{note}</span> : null}
      </summary>
      <div className={classes.body}>{isOpen ? children : null}</div>
    </details>
  );
}
