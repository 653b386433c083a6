import type { PoolClient } from 'pg';
import type { ScannedUnits } from '../../../usecases';
import { copyRows } from './copy-rows';
import { RowCursor } from './row-cursor';

/** What is usual is not sent: no options, and that the possible build days are one span, which their envelope tells. */
const FACTS = `u.id, u.built_from, u.built_to, m.number, u.serial_scheme, u.serial_key, NULLIF(u.options, '{}'),
  CASE WHEN u.built <> int4multirange(int4range(u.built_from, u.built_to)) THEN '' END`;

type Options = ScannedUnits['options'][number];

/** Facts of at most `most` units: those that the condition on `u` chooses. */
export async function readUnits(client: PoolClient, where: string, most: number): Promise<ScannedUnits> {
  const columns = new UnitColumns(most);
  const query = `SELECT ${FACTS} FROM unit u LEFT JOIN model m ON m.id = u.model_id WHERE ${where} ORDER BY u.id`;
  await copyRows(client, query, columns.take);
  return columns;
}

class UnitColumns implements ScannedUnits {
  count = 0;
  readonly id: Int32Array;
  readonly builtFrom: Int32Array;
  readonly builtTo: Int32Array;
  readonly model: (string | null)[] = [];
  readonly options: Options[] = [];
  readonly serialScheme: (string | null)[] = [];
  readonly serialKey: (string | null)[] = [];
  private readonly row = new RowCursor();
  private readonly optionsOf = new Map<string | null, Options>([[null, {}]]);

  constructor(most: number) {
    this.id = new Int32Array(most);
    this.builtFrom = new Int32Array(most);
    this.builtTo = new Int32Array(most);
  }

  /** The columns in the order of FACTS. */
  readonly take = (bytes: Buffer, begin: number, end: number): void => {
    const { row, count } = this;
    row.begin(bytes, begin, end);
    this.id[count] = row.number();
    const [from, to] = [row.number(), row.number()];
    this.model.push(row.text());
    this.serialScheme.push(row.text());
    this.serialKey.push(row.text());
    this.options.push(this.optionsIn(row.text()));
    const isOneSpan = row.text() === null;
    this.builtFrom[count] = isOneSpan ? from : 0;
    this.builtTo[count] = isOneSpan ? to : 0;
    this.count++;
  };

  private optionsIn(text: string | null): Options {
    let options = this.optionsOf.get(text);
    if (options === undefined) this.optionsOf.set(text, (options = JSON.parse(text!) as Options));
    return options;
  }
}
