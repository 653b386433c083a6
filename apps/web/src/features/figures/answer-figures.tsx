import { FIGURE_MEANINGS, type Figures } from '../../../../../libs/contracts';
import { PartNumber } from '../../components/part-number';
import { VerdictMark } from '../../components/verdict-mark';
import { saySpanText } from '../../lib/say';
import { Figure } from './figure';
import { sayBucket } from './say-bucket';

/** How the callbacks of each part of the span stand. */
export function CallbacksOverTime({ rows }: { rows: Figures['callbacks'] }) {
  return (
    <Figure
      title="Callbacks done"
      meaning={FIGURE_MEANINGS.callbacks}
      none="No callback was opened within these days"
      picture={{
        series: ['Done', 'No longer needed', 'Still to be done'],
        lie: false,
        stacked: true,
        rows: rows.map((row) => ({ label: sayBucket(row), values: [row.done, row.notNeeded, row.waiting] })),
      }}
      heads={['Opened', 'How many', 'Done', 'No longer needed', 'To be done', 'Middle days until done']}
      rows={rows
        .filter((row) => row.opened > 0)
        .map((row) => ({
          key: row.from,
          cells: [saySpanText(row), row.opened, row.done, row.notNeeded, row.waiting, row.medianDays ?? 'none yet'],
        }))}
    />
  );
}

/** Units whose build date is not known to the month, line by line. */
export function UnsettledBuildDates({ rows }: { rows: Figures['unsettled'] }) {
  return (
    <Figure
      title="Units without a settled build date"
      meaning={FIGURE_MEANINGS.unsettled}
      none="No unit was taken in within these days"
      picture={{
        series: ['Contradicted', 'Several runs', 'One long run', 'Settled'],
        lie: true,
        stacked: true,
        rows: rows.map((row) => ({
          label: row.line ?? 'Not identified',
          values: [row.contradicted, row.severalRuns, row.longer, row.settled],
        })),
      }}
      heads={['Product line', 'Units', 'Not settled', 'Evidence contradicts', 'Several runs of days', 'One long run']}
      rows={rows.map((row) => ({
        key: row.line ?? '',
        cells: [
          row.line ?? 'Not identified',
          row.units,
          row.units - row.settled,
          row.contradicted,
          row.severalRuns,
          row.longer,
        ],
      }))}
    />
  );
}

/** The parts that were wrong most often, and what should have been there. */
export function WrongParts({ rows }: { rows: Figures['wrongParts'] }) {
  return (
    <Figure
      title="Most frequent wrong parts"
      meaning={FIGURE_MEANINGS.wrongParts}
      none="No part was flagged as wrong or outdated within these days"
      picture={{
        series: ['Places'],
        lie: true,
        stacked: true,
        rows: rows.map(({ part, required, places }) => ({
          label: part.number,
          values: [places],
          note: required ? `for ${required.number}` : '',
        })),
      }}
      heads={['Part', 'Verdict', 'Required', 'Places']}
      rows={rows.map(({ part, required, verdict, places }) => ({
        key: `${part.key} ${required?.key ?? ''} ${verdict}`,
        cells: [
          <PartNumber key="part" number={part.number} name={part.name} />,
          <VerdictMark key="verdict" verdict={verdict} />,
          required ? (
            <PartNumber key="required" number={required.number} name={required.name} />
          ) : (
            'depends on the build date'
          ),
          places,
        ],
      }))}
    />
  );
}
