import type { PreparedShop } from '../../build-date';
import type { LookUpAnswer } from '../../contracts';
import { preparedShop } from '../build-days/index';
import type { LineRow, PartRow, PositionRow, ShopMark, Tables } from '../ports/index';

/** Most answers that are kept, of questions up to this length; the oldest goes first. */
const MOST_ANSWERS = 100;
const LONGEST_QUESTION = 2_000;

/**
 * What was read of the catalogue under one mark, and the answers made of it last. It fills as it is asked, with what the
 * shop holds and never with what somebody typed, so it stays as small as the catalogue.
 */
class Resident {
  readonly lines = new Map<string, LineRow>();
  readonly positions = new Map<number, readonly PositionRow[]>();
  readonly parts = new Map<string, PartRow>();
  readonly partsById = new Map<number, PartRow>();
  readonly answers = new Map<string, LookUpAnswer>();
  shop: PreparedShop | null = null;

  constructor(readonly mark: string) {}
}

const kept = new WeakMap<Tables['catalogue'], Resident>();

/** The catalogue as it stands under a mark that was just read: what was read before under the same mark is not read again. */
export class ResidentCatalogue {
  private constructor(
    private readonly tables: Pick<Tables, 'catalogue'>,
    private readonly resident: Resident,
  ) {}

  static at(tables: Pick<Tables, 'catalogue'>, { catalogue: mark }: ShopMark): ResidentCatalogue {
    let resident = kept.get(tables.catalogue);
    if (resident?.mark !== mark) kept.set(tables.catalogue, (resident = new Resident(mark)));
    return new ResidentCatalogue(tables, resident);
  }

  async line(code: string): Promise<LineRow | null> {
    const known = this.resident.lines.get(code);
    if (known) return known;
    const line = await this.tables.catalogue.lineByCode(code);
    if (line) this.resident.lines.set(code, line);
    return line;
  }

  async positionsOf({ id }: Pick<LineRow, 'id'>): Promise<readonly PositionRow[]> {
    const known = this.resident.positions.get(id);
    if (known) return known;
    const positions = await this.tables.catalogue.positionsOf(id);
    this.resident.positions.set(id, positions);
    return positions;
  }

  async parts(keys: readonly string[]): Promise<ReadonlyMap<string, PartRow>> {
    const { parts } = this.resident;
    const missing = keys.filter((key) => !parts.has(key));
    if (missing.length > 0) this.know(await this.tables.catalogue.partsByKeys(missing));
    return parts;
  }

  /** Those of the parts that there are. */
  async partsByIds(ids: readonly number[]): Promise<readonly PartRow[]> {
    const { partsById } = this.resident;
    const missing = ids.filter((id) => !partsById.has(id));
    if (missing.length > 0) this.know(await this.tables.catalogue.partsByIds(missing));
    return ids.flatMap((id) => partsById.get(id) ?? []);
  }

  private know(parts: readonly PartRow[]): void {
    for (const part of parts) {
      this.resident.parts.set(part.key, part);
      this.resident.partsById.set(part.id, part);
    }
  }

  /** The answer kept for that very question. */
  answerTo(question: string): LookUpAnswer | undefined {
    return this.resident.answers.get(question);
  }

  /** Keeps the answer where the question is short; it may then not be changed any more. */
  keep(question: string, answer: LookUpAnswer): LookUpAnswer {
    const { answers } = this.resident;
    if (question.length > LONGEST_QUESTION) return answer;
    answers.set(question, Object.freeze(answer));
    if (answers.size > MOST_ANSWERS) answers.delete(answers.keys().next().value!);
    return answer;
  }

  async shop(): Promise<PreparedShop> {
    return (this.resident.shop ??= await preparedShop(this.tables));
  }
}
