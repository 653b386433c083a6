import { formatDay, type Day } from '../../day';
import { instantAt, type Calendar } from '../calendar';
import type { DemoSource } from '../demo-shop';
import type { LineRoom, Paper } from '../lines/line-room';
import { makers } from '../makers/makers';

/** The hour at which the counter enters the post into the rulebook. */
const POST_HOUR = 9;

/** The key of a paper: its line and its short name there. */
export function sourceKey(line: LineRoom, paper: string): string {
  return `${line.code}-${paper}`;
}

/** The day the shop got a paper: it opened twelve years ago and asked for the older ones then. */
export function receivedOn(paper: Paper, calendar: Calendar): Day {
  return Math.max(paper.received, calendar.ago(12, 1, 8));
}

/** When what a paper says became known to the shop. */
export function knownFrom(paper: Paper, calendar: Calendar): number {
  return instantAt(receivedOn(paper, calendar), POST_HOUR);
}

/** First day on which a paper is in force. */
export function inForceOf(paper: Paper): Day {
  return paper.effective ?? paper.issued;
}

/** The papers of a line as published sources. */
export function papersOfLine(line: LineRoom, calendar: Calendar): DemoSource[] {
  return Object.entries(line.papers).map(([name, paper]) => ({
    ...sourceFileOf(line, name, paper, calendar),
    summary: `${paper.title}, ${paper.number}.`,
    state: 'published',
    publishedAt: knownFrom(paper, calendar),
    draft: null,
  }));
}

/** A paper as fit-rules writes sources. */
export function sourceFileOf(line: LineRoom, name: string, paper: Paper, calendar: Calendar) {
  return {
    key: sourceKey(line, name),
    kind: paper.kind,
    publisher: paper.kind === 'shop-finding' ? 'the shop itself' : makers.find(({ code }) => code === line.maker)!.name,
    number: paper.number,
    title: paper.title,
    issued: formatDay(paper.issued),
    effective: paper.effective === null ? null : formatDay(paper.effective),
    received: formatDay(receivedOn(paper, calendar)),
  };
}
