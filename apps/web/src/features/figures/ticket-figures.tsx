import { FIGURE_MEANINGS, type Figures } from '../../../../../libs/contracts';
import { STAGE_WORDS } from '../../lib/say';
import { PartNumber } from '../../components/part-number';
import { sayHours, share } from './bars';
import { Figure } from './figure';

const FLAGGED = ['Flagged', 'Not flagged'];

/** Flagged tickets, bench by bench. */
export function ByBench({ rows }: { rows: Figures['byBench'] }) {
  const nameOf = ({ bench, location }: Figures['byBench'][number]) => `${bench ?? 'No bench'}, ${location}`;
  return (
    <Figure
      title="Flagged tickets by bench"
      meaning={FIGURE_MEANINGS.byBench}
      none="No ticket was taken in within these days"
      picture={{
        series: FLAGGED,
        lie: true,
        stacked: true,
        rows: rows.map((row) => ({
          label: nameOf(row),
          values: [row.flagged, row.tickets - row.flagged],
          note: share(row.flagged, row.tickets),
        })),
      }}
      heads={['Bench', 'Tickets', 'Flagged', 'Share']}
      rows={rows.map((row) => ({
        key: nameOf(row),
        cells: [nameOf(row), row.tickets, row.flagged, share(row.flagged, row.tickets)],
      }))}
    />
  );
}

/** Flagged places, part by part. */
export function ByPart({ rows }: { rows: Figures['byPart'] }) {
  return (
    <Figure
      title="Flagged places by part"
      meaning={FIGURE_MEANINGS.byPart}
      none="No part was flagged on a ticket of these days"
      picture={{
        series: ['Flagged, in per cent'],
        lie: true,
        stacked: true,
        rows: rows.map(({ part, places, flagged }) => ({
          label: part.number,
          values: [Math.round((flagged / places) * 100)],
          note: `${flagged} of ${places}`,
        })),
      }}
      heads={['Part', 'Places', 'Flagged', 'Share']}
      rows={rows.map(({ part, places, flagged }) => ({
        key: part.key,
        cells: [
          <PartNumber key="part" number={part.number} name={part.name} />,
          places,
          flagged,
          share(flagged, places),
        ],
      }))}
    />
  );
}

/** How long tickets stay in each stage. */
export function TimeInStage({ rows }: { rows: Figures['stages'] }) {
  const stayed = rows.filter(({ stays }) => stays > 0);
  const days = (hours: number | null) => Math.round(((hours ?? 0) / 24) * 10) / 10;
  return (
    <Figure
      title="Time in stage, in days"
      meaning={FIGURE_MEANINGS.stages}
      none="No ticket left a stage within these days"
      picture={{
        series: ['Middle', 'Long'],
        lie: true,
        stacked: false,
        rows: stayed.map(({ stage, medianHours, longHours }) => ({
          label: STAGE_WORDS[stage],
          values: [days(medianHours), days(longHours)],
        })),
      }}
      heads={['Stage', 'Stays that ended', 'Middle', 'Long']}
      rows={stayed.map(({ stage, stays, medianHours, longHours }) => ({
        key: stage,
        cells: [STAGE_WORDS[stage], stays, sayHours(medianHours), sayHours(longHours)],
      }))}
    />
  );
}
