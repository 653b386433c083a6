import { choosePart, partReadings, type ChosenPart, type NumberRules, type PartReading } from '../../../part-number';
import type { PartRow, Tables } from '../../ports/index';
import { withZeros } from './eaten-zeros';

/** Part numbers of tickets, read as at the bench: by the line's maker first, then by the others. */
export class TicketParts {
  private readonly known = new Map<string, PartRow>();
  private readonly fresh = new Map<string, { key: string; maker: string; number: string; canonical: string }>();

  private constructor(
    private readonly tx: Tables,
    private readonly rules: readonly NumberRules[],
    private readonly makerOf: ReadonlyMap<string, string>,
  ) {}

  static async of(tx: Tables): Promise<TicketParts> {
    const makers = await tx.catalogue.makers();
    const lines = await tx.catalogue.lines();
    return new TicketParts(
      tx,
      makers.map(({ numberRules }) => numberRules),
      new Map(lines.map(({ code, maker }) => [code, maker.code])),
    );
  }

  /** Looks all of them up at once, before any is read; those of the call before are forgotten. */
  async load(texts: readonly (string | null | undefined)[]): Promise<void> {
    const keys = new Set<string>();
    this.known.clear();
    for (const text of new Set(texts)) {
      if (!text) continue;
      for (const reading of partReadings(text, this.rules, null)) {
        for (const key of [reading.key, ...withZeros(reading)]) keys.add(key);
      }
    }
    if (keys.size === 0) return;
    for (const part of await this.tx.catalogue.partsByKeys([...keys])) this.known.set(part.key, part);
  }

  read(text: string, line: string): ChosenPart {
    return choosePart(text, this.rules, this.makerOf.get(line) ?? null, (key) => {
      const part = this.known.get(key);
      return part ? (part.listed ? 'listed' : 'seen') : null;
    });
  }

  /** The listed part that this number is with the zeros a spreadsheet may have eaten; null when the number is known. */
  zerosEaten(reading: PartReading): PartRow | null {
    if (this.known.has(reading.key)) return null;
    return (
      withZeros(reading)
        .map((key) => this.known.get(key))
        .find((part) => part?.listed) ?? null
    );
  }

  /** The number on a row that is kept; one that no catalogue lists will be added as it was read. */
  use(text: string, line: string): PartReading {
    const chosen = this.read(text, line);
    if (!chosen.ok) throw new Error(`part ${text} was accepted and cannot be read`);
    const { key, makerCode, canonical } = chosen.part;
    if (!this.known.has(key)) this.fresh.set(key, { key, maker: makerCode, number: text.trim(), canonical });
    return chosen.part;
  }

  /** The numbers that no catalogue lists since the last call. */
  takeNew(): readonly { key: string; maker: string; number: string; canonical: string }[] {
    const all = [...this.fresh.values()];
    this.fresh.clear();
    return all;
  }
}
