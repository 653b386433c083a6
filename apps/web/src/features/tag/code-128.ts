import type { DrawingContext, RenderOptions } from 'bwip-js/browser';

/** One black bar, in modules (the width of the narrowest bar) from the left edge of the code. */
export interface Bar {
  readonly at: number;
  readonly width: number;
}

/** The bars of a code and its whole width in modules, the blank on either side included. */
export interface Bars {
  readonly modules: number;
  readonly bars: readonly Bar[];
}

/** Draws a code through a drawing context. */
export type Encoder = <T>(options: RenderOptions, drawing: DrawingContext<T>) => T;

/** Blank modules a scanner needs on either side (ISO/IEC 15417: at least ten). */
export const QUIET_MODULES = 10;

/** A dot of the label printer in millimetres, at 203 dots to the inch. */
export const DOT_MM = 25.4 / 203;

/** The text as the bars of a Code 128, which takes every character of ASCII. */
export function code128Bars(encode: Encoder, text: string): Bars {
  return encode({ bcid: 'code128', text, scale: 1, height: 10 }, collectBars());
}

/**
 * Whole printer dots to one module, so that no bar is rounded wider than another: as many as fit the width, at most
 * four (half a millimetre, which a thumb with oil on it leaves readable), at least two.
 */
export function dotsPerModule({ modules }: Bars, widthMm: number): number {
  return Math.max(2, Math.min(4, Math.floor(widthMm / DOT_MM / modules)));
}

/** A drawing that keeps the bars as they are. Bars come as lines, each with its middle rounded up and its width. */
function collectBars(): DrawingContext<Bars> {
  const bars: Bar[] = [];
  let width = 0;
  const nothing = (): void => undefined;
  return {
    scale: () => null,
    measure: () => ({ width: 0, ascent: 0, descent: 0 }),
    init: (modules) => void (width = modules),
    line: (middle, _top, _x, _bottom, wide) =>
      void bars.push({ at: QUIET_MODULES + middle - Math.ceil(wide / 2), width: wide }),
    polygon: nothing,
    hexagon: nothing,
    ellipse: nothing,
    fill: nothing,
    text: nothing,
    end: () => ({ modules: width + 2 * QUIET_MODULES, bars }),
  };
}
