import type { DemoLine, DemoPart, DemoPosition } from '../demo-shop';
import type { LineRoom, PartNote, PositionRoom } from '../lines/line-room';
import { keyOfPart } from './part-keys';
import { sundriesOf } from './sundries';

/** A line as the shop's catalogue shows it. */
export function lineOf({ papers: _papers, positions, ...line }: LineRoom): DemoLine {
  return { ...line, positions: positions.map((position) => positionOf(line.maker, position)) };
}

function positionOf(maker: string, { code, name, assembly, places, at, joint, parts }: PositionRoom): DemoPosition {
  const keys = parts.map(({ number }) => keyOfPart(maker, number));
  return { code, name, assembly, placeNames: places, sketchX: at[0], sketchY: at[1], joint, parts: keys };
}

/** Every part of a line: those of its positions, then its sundries. */
export function partsOfLine(line: LineRoom): DemoPart[] {
  const notes: PartNote[] = [...line.positions.flatMap(({ parts }) => [...parts]), ...sundriesOf(line)];
  return notes.map((note) => ({ ...note, key: keyOfPart(line.maker, note.number), maker: line.maker }));
}
