import type { PlaceSide } from '../../../../../libs/contracts';
import { FitFindings } from '../../components/fit-findings';
import { VerdictWhy } from '../../components/verdict-why';
import { CandidateList } from './candidate-list';
import { marksWords } from './marks-words';

/** What the shop makes of an entry: the part it is, what its marks allow, the verdict on it. */
export function EntrySaid({ record }: { record: PlaceSide | null }) {
  if (!record) return null;
  return (
    <>
      {record.leftOutWhy !== null ? <p>Left out: {record.leftOutWhy}</p> : null}
      {record.marks ? <p>No number readable; {marksWords(record.marks)}.</p> : null}
      {record.marks ? <CandidateList side={record} /> : null}
      {record.part ? <p className="soft">{record.part.name}</p> : null}
      <FitFindings fit={record.fit} />
      {record.verdict ? <VerdictWhy verdict={record.verdict} /> : null}
    </>
  );
}
