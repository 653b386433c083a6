import type { BulkJudge } from '../../fit-rules';
import { NOT_THERE, SCANNED, SCANNED_COLUMNS, type InstallScan, type InstallScans } from '../ports/install-scan';
import type { LoadedRulebook } from '../rulebook';

/** A position as the bulk judge knows it. */
export interface NumberedPlace {
  readonly line: string;
  /** The line with its positions, as the bulk judge numbers them together. */
  readonly lineNumber: number;
  /** Which of those positions it is. */
  readonly order: number;
}

const NOT_ASKED = -2;

/** Taken hold of once: they are looked up for every row. */
const [POSITION, PART, WIDTH, NO_PART] = [SCANNED.position, SCANNED.part, SCANNED_COLUMNS, NOT_THERE];

/** What the ids of a scan mean to one rulebook. Learnt when first met, kept for as long as the rulebook is. */
export class ScanNumbers {
  private readonly places: NumberedPlace[] = [];
  /** Positions met so far, line by line. */
  private readonly lines = new Map<string, { readonly id: number; readonly position: string }[]>();
  /** Index of a part in the bulk judge by part id. */
  private parts = new Int32Array(1_024).fill(NOT_ASKED);

  private constructor(private readonly bulk: BulkJudge) {}

  static of(rulebook: LoadedRulebook): ScanNumbers {
    let numbers = kept.get(rulebook);
    if (!numbers) kept.set(rulebook, (numbers = new ScanNumbers(rulebook.judge.bulk)));
    return numbers;
  }

  place(positionId: number): NumberedPlace | undefined {
    return this.places[positionId];
  }

  /** -1 for a part that no rule names. */
  part(partId: number): number {
    return this.parts[partId]!;
  }

  /** Learns every id of the scan, so that afterwards each can be looked up. */
  async learn({ rows, count }: InstallScan, scans: InstallScans): Promise<void> {
    const [parts, positions] = [new Set<number>(), new Set<number>()];
    const { places, parts: known } = this;
    for (let at = 0; at < count * WIDTH; at += WIDTH) {
      const part = rows[at + PART]!;
      if (part !== NO_PART && !(known[part]! > NOT_ASKED)) parts.add(part);
      const position = rows[at + POSITION]!;
      if (places[position] === undefined) positions.add(position);
    }
    if (positions.size > 0) await this.learnPlaces(positions, scans);
    if (parts.size > 0) await this.learnParts([...parts], scans);
  }

  private async learnPlaces(wanted: ReadonlySet<number>, scans: InstallScans): Promise<void> {
    const grown = new Set<string>();
    for (const [id, { line, position }] of await scans.positions()) {
      if (!wanted.has(id)) continue;
      if (!this.lines.has(line)) this.lines.set(line, []);
      this.lines.get(line)!.push({ id, position });
      grown.add(line);
    }
    for (const line of grown) this.numberLine(line);
  }

  /** A line that has grown gets another number, and with it all its positions. */
  private numberLine(line: string): void {
    const positions = this.lines.get(line)!;
    const lineNumber = this.bulk.lineOf(
      line,
      positions.map(({ position }) => position),
    );
    for (const [order, { id }] of positions.entries()) this.places[id] = { line, lineNumber, order };
  }

  private async learnParts(ids: readonly number[], scans: InstallScans): Promise<void> {
    this.makeRoom(ids.reduce((most, id) => Math.max(most, id), 0));
    for (const [id, key] of await scans.partKeys(ids)) this.parts[id] = this.bulk.partIndex(key);
  }

  private makeRoom(id: number): void {
    if (id < this.parts.length) return;
    const larger = new Int32Array(Math.max(id + 1, 2 * this.parts.length)).fill(NOT_ASKED);
    larger.set(this.parts);
    this.parts = larger;
  }
}

const kept = new WeakMap<LoadedRulebook, ScanNumbers>();
