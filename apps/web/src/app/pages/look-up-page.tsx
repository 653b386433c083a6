import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { LookUpRequest } from '../../../../../libs/contracts';
import { EvidenceFields } from '../../components/evidence-fields';
import { QueryView } from '../../components/query-view';
import { Section } from '../../components/section';
import { LookUpForm } from '../../features/look-up/look-up-form';
import { lookUpQuery } from '../../lib/look-up-query';
import { LookUpResult } from '../../features/look-up/look-up-result';
import { linesQuery } from '../../lib/catalogue-queries';

/** Which part? An answer for a walk-in, without a ticket. */
export function LookUpPage() {
  const lines = useQuery(linesQuery);
  const [asked, setAsked] = useState<LookUpRequest | null>(null);
  const answer = useQuery(lookUpQuery(asked));
  const addEvidence = (piece: { kind: string }) =>
    setAsked((now) =>
      now ? { ...now, evidence: [...now.evidence, { ...piece, id: `seen-${now.evidence.length + 1}` }] } : now,
    );
  return (
    <>
      <h1>Which part?</h1>
      <QueryView query={lines} what="the product lines">
        {(all) => <LookUpForm lines={all} onAsk={(unit) => setAsked({ ...unit, evidence: [] })} />}
      </QueryView>
      {asked ? (
        <>
          <Section title="More evidence of the build date" note={`${asked.evidence.length} given`}>
            <EvidenceFields onAdd={addEvidence} />
          </Section>
          <QueryView query={answer} what="the answer">
            {(found) => <LookUpResult answer={found} />}
          </QueryView>
        </>
      ) : (
        <p className="soft">Pick the product line; model and serial narrow the answer, and are not always needed.</p>
      )}
    </>
  );
}
