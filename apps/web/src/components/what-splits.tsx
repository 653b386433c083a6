import type { BuildDates } from '../../../../libs/contracts';
import { Said } from './said';

/** Why the possible days are several spans: a sentence for each gap between them. */
export function WhatSplits({ buildDates: { splits } }: { buildDates: BuildDates }) {
  if (splits.length === 0) return null;
  return (
    <ul>
      {splits.map((sentence) => (
        <li key={sentence}>
          <Said>{sentence}</Said>
        </li>
      ))}
    </ul>
  );
}
