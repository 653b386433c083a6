import { Link } from '@tanstack/react-router';
import type { TicketView } from '../../../../../libs/contracts';
import { EvidenceFields } from '../../components/evidence-fields';
import { EvidencePicture } from '../../components/evidence-picture';
import { ActProblem } from '../../components/act-problem';
import { Conflicts } from '../../components/conflicts';
import { LookAtNext } from '../../components/look-at-next';
import { Section } from '../../components/section';
import { WarrantyNote } from '../../components/warranty-note';
import { WhatSplits } from '../../components/what-splits';
import { sayDayText } from '../../lib/say';
import { useMay } from '../../lib/session';
import { EvidenceList } from './evidence-list';
import { IdentityForm } from './identity-form';
import { SerialOtherwise } from './serial-otherwise';
import { useUnitAct } from './ticket-query';
import { Said } from '../../components/said';
import classes from './unit-panel.module.css';

/** The unit: its plate, the evidence of its build date as a picture, what remains, and what to look at next. */
export function UnitPanel({ ticket }: { ticket: TicketView }) {
  const { unit } = ticket;
  const { buildDates } = unit;
  const act = useUnitAct(ticket.id);
  const warrantyAct = useUnitAct(ticket.id);
  const mayAdd = useMay('add-evidence') && ticket.closedAt === null;
  const boundaries = [...new Set(ticket.rulings.flatMap((ruling) => ruling.boundaries))].sort();
  return (
    <section aria-labelledby="the-unit" className={classes.panel}>
      <h2 id="the-unit">The unit</h2>
      <p>
        <Link to="/units/$id" params={{ id: unit.id }}>
          Its visits, and its own tag
        </Link>
      </p>
      <p className={classes.answer}>
        <Said>{buildDates.sentence}</Said>
      </p>
      {unit.serialReading ? (
        <p className="soft">
          <Said>{unit.serialReading}</Said>
        </p>
      ) : null}
      {buildDates.evidence.length > 0 ? <EvidencePicture buildDates={buildDates} boundaries={boundaries} /> : null}
      <WhatSplits buildDates={buildDates} />
      <Conflicts buildDates={buildDates} />
      <SerialOtherwise ticket={ticket} />
      <LookAtNext buildDates={buildDates} ruled={ticket.rulings.length > 0} />
      <Section title="Plate and serial" open={ticket.stage === 'intake'}>
        <IdentityForm key={unit.version} ticket={ticket} />
      </Section>
      <Section title="Warranty" note={warrantyWord(unit.warranty)} open={unit.warranty?.runs ?? false}>
        <WarrantyNote
          unit={unit}
          touched={ticket.touched}
          busy={warrantyAct.isPending}
          error={warrantyAct.error}
          onSet={(body, version, onSuccess) =>
            warrantyAct.mutate({ method: 'PUT', path: '/warranty', body, version }, { onSuccess })
          }
        />
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

function warrantyWord(warranty: TicketView['unit']['warranty']): string {
  if (!warranty) return 'not known';
  return `${warranty.runs ? 'until' : 'ended'} ${sayDayText(warranty.lastDay)}`;
}
