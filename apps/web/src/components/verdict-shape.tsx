import type { VerdictWord } from '../../../../libs/contracts';

/**
 * The six shapes, drawn in a box from -10 to 10 around the origin, so that a mark, a sketch and a print share them:
 * filled disc, ring with a dot, disc with a wedge cut out, filled square, hollow diamond, diamond split in two.
 */
export function VerdictShape({ verdict }: { verdict: VerdictWord }) {
  const ink = `var(--${verdict})`;
  const line = { fill: 'none', stroke: ink, strokeWidth: 2.6 };
  switch (verdict) {
    case 'right':
      return <circle r="8.5" fill={ink} />;
    case 'allowed':
      return (
        <g>
          <circle r="7.6" {...line} />
          <circle r="3" fill={ink} />
        </g>
      );
    case 'outdated':
      return <path d="M0 0 L0 -8.6 A8.6 8.6 0 1 0 8.6 0 Z" fill={ink} />;
    case 'wrong':
      return <rect x="-8" y="-8" width="16" height="16" fill={ink} />;
    case 'undecided':
      return <path d="M0 -8.6 L8.6 0 L0 8.6 L-8.6 0 Z" {...line} />;
    case 'disputed':
      return <path d="M-1.5 -9 L-1.5 9 L-9.5 0 Z M1.5 -9 L1.5 9 L9.5 0 Z" fill={ink} />;
  }
}
