import type { TicketView } from '../../../../../libs/contracts';
import { EvidenceFields } from '../../components/evidence-fields';
import { EvidencePicture } from '../../components/evidence-picture';
import { ActProblem } from '../../components/act-problem';
import { Section } from '../../components/section';
import { useMay } from '../../lib/session';
import { EvidenceList } from './evidence-list';
import { IdentityForm } from './identity-form';
import { OtherReadings } from './other-readings';
import { useUnitAct } from './ticket-query';
import classes from './unit-panel.module.css';

/** The unit: its plate, the evidence of its build date as a picture, what remains, and what to look at next. */
export function UnitPanel({ ticket }: { ticket: TicketView }) {
  const { unit } = ticket;
  const { buildDates } = unit;
  const act = useUnitAct(ticket.id);
  const mayAdd = useMay('add-evidence') && ticket.closedAt === null;
  const boundaries = [...new Set(ticket.rulings.flatMap((ruling) => ruling.boundaries))].sort();
  return (
    <section aria-labelledby="the-unit" className={classes.panel}>
      <h2 id="the-unit">The unit</h2>
      <p className={classes.answer}>{buildDates.sentence}</p>
      {unit.serialReading ? <p className="soft">{unit.serialReading}</p> : null}
      {buildDates.evidence.length > 0 ? <EvidencePicture buildDates={buildDates} boundaries={boundaries} /> : null}
      <Conflicts ticket={ticket} />
      <OtherReadings ticket={ticket} />
      {buildDates.lookAt.length > 0 ? (
        <>
          <h3>Look at next</h3>
          <ol className={classes.lookAt}>
            {buildDates.lookAt.map(({ kind, sentence }) => (
              <li key={kind}>{sentence}</li>
            ))}
          </ol>
        </>
      ) : null}
      <Section title="Plate and serial" open={ticket.stage === 'intake'}>
        <IdentityForm key={unit.version} ticket={ticket} />
      </Section>
      <Section title="Evidence" note={`${buildDates.evidence.length}`}>
        <EvidenceList ticket={ticket} />
        {mayAdd ? (
          <EvidenceFields
            busy={act.isPending}
            onAdd={(evidence) => act.mutate({ method: 'POST', path: '/evidence', body: { evidence } })}
          />
        ) : null}
        <ActProblem error={act.error} />
      </Section>
    </section>
  );
}

function Conflicts({ ticket }: { ticket: TicketView }) {
  const { conflicts, evidence } = ticket.unit.buildDates;
  if (conflicts.length === 0) return null;
  const named = (id: string) => evidence.find((piece) => piece.id === id)?.sentence ?? id;
  return (
    <div className={classes.conflict}>
      <h3>These cannot all be true</h3>
      {conflicts.map((ids) => (
        <ul key={ids.join()}>
          {ids.map((id) => (
            <li key={id}>{named(id)}</li>
          ))}
        </ul>
      ))}
      <p>Read the plate again, or set a piece aside with a reason.</p>
    </div>
  );
}
