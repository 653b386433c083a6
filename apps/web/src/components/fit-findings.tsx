import type { FitView } from '../../../../libs/contracts';
import { Said } from './said';

const SUMMARY = {
  yes: 'By its measures it goes in.',
  no: 'It does not fit.',
  'not-told': 'Whether it fits is not fully known.',
};

/** Whether a shear fastener goes into its joint: what speaks against it openly, the rest one tap away. */
export function FitFindings({ fit }: { fit: FitView | null }) {
  if (!fit) return null;
  const against = fit.findings.filter(({ fits }) => fits === 'no');
  const rest = fit.findings.filter(({ fits }) => fits !== 'no');
  return (
    <div data-fit={fit.fits}>
      {against.map(({ field, sentence }) => (
        <p key={field}>
          <strong>Does not fit.</strong> <Said>{sentence}</Said>
        </p>
      ))}
      <details>
        <summary>{SUMMARY[fit.fits]}</summary>
        {rest.map(({ field, sentence }) => (
          <p key={field}>{sentence}</p>
        ))}
      </details>
    </div>
  );
}
