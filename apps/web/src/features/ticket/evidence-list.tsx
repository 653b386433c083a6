import { Button } from '@mantine/core';
import { useState } from 'react';
import type { EvidenceView, TicketView } from '../../../../../libs/contracts';
import { ReasonDialog } from '../../components/reason-dialog';
import { evidenceWords } from '../../lib/evidence-words';
import { useMay } from '../../lib/session';
import { useUnitAct } from './ticket-query';
import { Said } from '../../components/said';
import classes from './unit-panel.module.css';

/** Every piece of evidence in words; one can be set aside with a reason and taken up again. */
export function EvidenceList({ ticket }: { ticket: TicketView }) {
  const [asked, setAsked] = useState<EvidenceView | null>(null);
  const act = useUnitAct(ticket.id);
  const may = useMay('set-aside-evidence') && ticket.closedAt === null;
  const setAside = (id: string, reason: string | null) =>
    act.mutate(
      { method: 'POST', path: `/evidence/${id}/set-aside`, body: { reason } },
      { onSuccess: () => setAsked(null) },
    );
  return (
    <>
      <ul className={classes.pieces}>
        {ticket.unit.buildDates.evidence.map((piece) => (
          <li key={piece.id}>
            <p>
              <strong>{evidenceWords(piece.kind)}:</strong>{' '}
              <span className={piece.setAside ? classes.aside : undefined}>
                <Said>{piece.sentence}</Said>
              </span>
            </p>
            {piece.problem ? <p className="soft">{piece.problem}</p> : null}
            {piece.setAside ? (
              <p className="soft">{`Set aside${piece.setAside.by ? ` by ${piece.setAside.by}` : ''}: ${piece.setAside.why}`}</p>
            ) : null}
            {may ? (
              <Button
                variant="subtle"
                px="xs"
                onClick={() => (piece.setAside ? setAside(piece.id, null) : setAsked(piece))}
              >
                {piece.setAside ? 'Take it up again' : 'Set aside'}
              </Button>
            ) : null}
          </li>
        ))}
      </ul>
      {asked ? (
        <ReasonDialog
          open
          title={`Set aside: ${evidenceWords(asked.kind)}`}
          act="Set it aside"
          busy={act.isPending}
          error={act.error}
          onClose={() => setAsked(null)}
          onReason={(reason) => setAside(asked.id, reason)}
        >
          <p>
            <Said>{asked.sentence}</Said>
          </p>
        </ReasonDialog>
      ) : null}
    </>
  );
}
