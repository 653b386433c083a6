import { useId } from 'react';
import { Bar, BarChart as Chart, CartesianGrid, LabelList, ResponsiveContainer, XAxis, YAxis } from 'recharts';
import { WallInks } from '../../components/wall-inks';
import { barsInWords, type BarPicture } from './bars';
import classes from './figures.module.css';

const ROW = 34;
const STANDING_HEIGHT = 260;
const TICK = { fill: 'var(--ink)', fontSize: 14 };

const LINE = 'var(--rule-strong)';
const LYING = (
  <>
    <XAxis type="number" allowDecimals={false} tick={TICK} stroke={LINE} />
    <YAxis type="category" dataKey="label" width={150} interval={0} tick={<Name />} stroke={LINE} />
  </>
);
const STANDING = (
  <>
    <XAxis dataKey="label" tick={TICK} stroke={LINE} />
    <YAxis allowDecimals={false} width={36} tick={TICK} stroke={LINE} />
  </>
);

/** Bars with an ink and a pattern for each series, and the key to them; the same numbers in words for who cannot see it. */
export default function BarChart({ picture }: { picture: BarPicture }) {
  const id = useId().replaceAll(/[^\w-]/g, '');
  const { series, rows, lie, stacked } = picture;
  const data = rows.map(({ label, values, note }) => ({
    label,
    note: note ?? '',
    ...Object.fromEntries(values.map((value, at) => [`v${at}`, value])),
  }));
  const height = lie ? 40 + rows.length * (stacked ? ROW : ROW * 1.6) : STANDING_HEIGHT;
  return (
    <figure className={classes.picture}>
      <Key id={id} series={series} />
      <div role="img" aria-label={barsInWords(picture)} style={{ height }}>
        <ResponsiveContainer width="100%" height="100%">
          <Chart
            data={data}
            layout={lie ? 'vertical' : 'horizontal'}
            accessibilityLayer={false}
            margin={{ top: 8, right: lie ? 96 : 8, bottom: 0, left: 0 }}
          >
            <WallInks id={id} />
            <CartesianGrid stroke="var(--rule)" vertical={lie} horizontal={!lie} />
            {lie ? LYING : STANDING}
            {series.map((name, at) => (
              <Bar
                key={name}
                dataKey={`v${at}`}
                stackId={stacked ? 'one' : undefined}
                fill={`url(#${id}-${at})`}
                stroke="var(--ink)"
                maxBarSize={lie ? 22 : 48}
                isAnimationActive={false}
              >
                {lie && at === series.length - 1 ? (
                  <LabelList dataKey="note" position="right" fill="var(--ink)" fontSize={14} />
                ) : null}
              </Bar>
            ))}
          </Chart>
        </ResponsiveContainer>
      </div>
    </figure>
  );
}

/** Letters that fit before the bars; the whole name stands in the table and in the words for the picture. */
const LETTERS = 20;

function Name({ x = 0, y = 0, payload }: { x?: number; y?: number; payload?: { value: string } }) {
  const name = payload?.value ?? '';
  return (
    <text x={x} y={y} dx={-4} dy="0.35em" textAnchor="end" fill="var(--ink)" fontSize={14}>
      {name.length > LETTERS ? `${name.slice(0, LETTERS - 1).trimEnd()}…` : name}
    </text>
  );
}

function Key({ id, series }: { id: string; series: readonly string[] }) {
  return (
    <ul className={classes.key} aria-hidden>
      {series.map((name, at) => (
        <li key={name}>
          <svg width="22" height="16">
            <rect x="0.5" y="0.5" width="21" height="15" fill={`url(#${id}-${at})`} stroke="var(--ink)" />
          </svg>
          {name}
        </li>
      ))}
    </ul>
  );
}
