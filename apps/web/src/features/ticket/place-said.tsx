import type { PlaceSide } from '../../../../../libs/contracts';
import { FitFindings } from '../../components/fit-findings';
import { PartNumber } from '../../components/part-number';
import { VerdictWhy } from '../../components/verdict-why';
import { CandidateList } from './candidate-list';
import { marksWords } from './marks-words';

/** What stands on record for one side of a place. */
export function PlaceSaid({ side }: { side: PlaceSide | null }) {
  if (!side) return <p className="soft">Not recorded.</p>;
  return (
    <>
      <p>
        {side.leftOutWhy !== null ? <>Left out: {side.leftOutWhy}</> : null}
        {side.part ? <PartNumber number={side.part.number} name={side.part.name} /> : null}
        {!side.part && side.partText ? <PartNumber number={side.partText} /> : null}
        {side.marks && !side.part ? <>No number readable; {marksWords(side.marks)}</> : null}
        {side.condition ? <span className="soft"> {side.condition}</span> : null}
      </p>
      {side.marks ? <CandidateList side={side} /> : null}
      <FitFindings fit={side.fit} />
      {side.verdict ? <VerdictWhy verdict={side.verdict} /> : null}
    </>
  );
}
