import { code128 } from 'bwip-js/browser';
import { useMemo } from 'react';
import { code128Bars, DOT_MM, dotsPerModule } from './code-128';
import classes from './printed-tag.module.css';

/** Room for the code between the margins of the label. */
const ROOM_MM = 94;

/** The number as a Code 128 that a scanner reads, as wide as whole dots of the printer make it. */
export function TagCode({ number }: { number: string }) {
  const code = useMemo(() => code128Bars((options, drawing) => code128(options, drawing), number), [number]);
  const width = code.modules * dotsPerModule(code, ROOM_MM) * DOT_MM;
  return (
    <svg
      className={classes.code}
      role="img"
      aria-label={`Code 128 of ${number}`}
      width={`${width.toFixed(3)}mm`}
      viewBox={`0 0 ${code.modules} 1`}
      preserveAspectRatio="none"
      shapeRendering="crispEdges"
    >
      <path d={code.bars.map(({ at, width: wide }) => `M${at} 0h${wide}v1h-${wide}z`).join('')} />
    </svg>
  );
}
