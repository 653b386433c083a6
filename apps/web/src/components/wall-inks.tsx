/** How a span is filled: an ink of the theme and a pattern, so that neighbours differ without colour too. */
const INKS = ['--accent', '--outdated', '--allowed', '--right', '--wrong', '--undecided'] as const;

const STROKES = [
  null,
  'M0 8 L8 0 M-2 2 L2 -2 M6 10 L10 6',
  'M4 0 V8',
  'M0 0 L8 8 M-2 6 L2 10 M6 -2 L10 2',
  'M0 4 H8',
  'M0 4 H8 M4 0 V8',
] as const;

export const INK_COUNT = INKS.length;

/** The patterns of one picture; `id` keeps those of two pictures on one page apart. */
export function WallInks({ id }: { id: string }) {
  return (
    <defs>
      {INKS.map((ink, i) => (
        <pattern key={ink} id={`${id}-${i}`} width="8" height="8" patternUnits="userSpaceOnUse">
          <rect width="8" height="8" style={{ fill: 'var(--raised)' }} />
          <rect width="8" height="8" opacity="0.16" style={{ fill: `var(${ink})` }} />
          {STROKES[i] ? (
            <path d={STROKES[i]} fill="none" strokeWidth="1.2" opacity="0.55" style={{ stroke: `var(${ink})` }} />
          ) : null}
        </pattern>
      ))}
    </defs>
  );
}
