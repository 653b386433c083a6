import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { LookUpRequest } from '../../../../../libs/contracts';
import { EvidenceFields } from '../../components/evidence-fields';
import type { OtherReading } from '../../components/other-readings';
import { QueryView } from '../../components/query-view';
import { Section } from '../../components/section';
import { GivenEvidence } from '../../features/look-up/given-evidence';
import { LookUpForm } from '../../features/look-up/look-up-form';
import { lookUpQuery } from '../../lib/look-up-query';
import { LookUpResult } from '../../features/look-up/look-up-result';
import { linesQuery } from '../../lib/catalogue-queries';

type Piece = LookUpRequest['evidence'][number];

/** The serial as a person now reads it, or the vehicle number among the evidence; the API names those by their place. */
function withReading(evidence: Piece[], { id, kind, serial }: OtherReading): Partial<LookUpRequest> {
  if (kind === 'serial-scheme') return { serial };
  return { evidence: evidence.map((piece, at) => (id === `given-${at + 1}` ? { ...piece, vin: serial } : piece)) };
}

/** Which part? An answer for a walk-in, without a ticket. */
export function LookUpPage() {
  const lines = useQuery(linesQuery);
  const [asked, setAsked] = useState<LookUpRequest | null>(null);
  const answer = useQuery(lookUpQuery(asked));
  const set = (change: Partial<LookUpRequest>) => setAsked((now) => (now ? { ...now, ...change } : now));
  const evidence = asked?.evidence ?? [];
  // What was read off the machine stays while its serial or its options are mended; another line is another machine.
  const ask = (unit: Omit<LookUpRequest, 'evidence'>) =>
    setAsked({ ...unit, evidence: unit.lineCode === asked?.lineCode ? evidence : [] });
  return (
    <>
      <h1>Which part?</h1>
      <QueryView query={lines} what="the product lines">
        {(all) => <LookUpForm lines={all} onAsk={ask} />}
      </QueryView>
      {asked ? (
        <>
          <Section title="More evidence of the build date" note={`${evidence.length} given`}>
            <GivenEvidence
              evidence={evidence}
              onRemove={(at) => set({ evidence: evidence.filter((_, index) => index !== at) })}
            />
            <EvidenceFields onAdd={(piece: Piece) => set({ evidence: [...evidence, piece] })} />
          </Section>
          <QueryView query={answer} what="the answer">
            {(found) => <LookUpResult answer={found} onTake={(reading) => () => set(withReading(evidence, reading))} />}
          </QueryView>
        </>
      ) : (
        <p className="soft">Pick the product line; model and serial narrow the answer, and are not always needed.</p>
      )}
    </>
  );
}
