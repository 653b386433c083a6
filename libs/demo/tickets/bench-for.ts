import type { DemoLine } from '../demo-shop';
import type { LocationCode } from '../shop/people';

/** The bench of a location that takes a kind of machine. */
export function benchFor(location: LocationCode, { kind }: DemoLine): string {
  if (location === 'QUAY') return kind.includes('chipper') || kind === 'tiller' ? 'Q1' : 'Q2';
  if (kind === 'tiller') return 'M2';
  return kind === 'log splitter' || kind.includes('cutter') ? 'M3' : 'M1';
}
