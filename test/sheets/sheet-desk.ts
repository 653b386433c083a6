import type { Problem, SheetView } from '../../libs/contracts';
import { kindOf, type Mapping, type SheetKind } from '../../libs/sheets';
import type { Answer, Caller } from '../api/api-shop';

type Look = Partial<{ mapping: Mapping; dayOrder: string | null; publish: boolean }>;

/** What a manager does with spreadsheets, over HTTP. */
export class SheetDesk {
  constructor(
    private readonly url: string,
    readonly caller: Caller,
  ) {}

  /** Brings a file; `more` goes into the query. */
  bring<T = SheetView>(kind: SheetKind, text: string | Buffer, name = 'file.csv', more = ''): Promise<Answer<T>> {
    return this.caller.upload<T>(`/sheets?kind=${kind}${more}`, { name, text });
  }

  /** Sends one file to whichever route takes one. */
  send<T>(path: string, text: string | Buffer, name: string): Promise<Answer<T>> {
    return this.caller.upload<T>(path, { name, text });
  }

  /** Brings a file and looks at it by the proposed columns. */
  async look(kind: SheetKind, content: string | Buffer, more: Look & { name?: string } = {}): Promise<SheetView> {
    const { name, ...choice } = more;
    const brought = await this.bring(kind, content, name);
    if (brought.status !== 201) throw new Error(JSON.stringify(brought.body));
    return this.lookAgain(brought.body, choice);
  }

  async lookAgain({ id, version, mapping, dayOrder }: SheetView, choice: Look = {}): Promise<SheetView> {
    const looked = await this.caller.change<SheetView>('POST', `/sheets/${id}/look`, version, {
      mapping,
      dayOrder,
      ...choice,
    });
    if (looked.status !== 200) throw new Error(JSON.stringify(looked.body));
    return looked.body;
  }

  import<T = SheetView>({ id, version }: SheetView, leaveOutRejected = false): Promise<Answer<T>> {
    return this.caller.change<T>('POST', `/sheets/${id}/import`, version, { leaveOutRejected });
  }

  /** Brings, looks and imports; throws when anything is refused. */
  async take(kind: SheetKind, content: string | Buffer, more: Look = {}): Promise<SheetView> {
    const looked = await this.look(kind, content, more);
    const imported = await this.import<SheetView | Problem>(looked);
    if (imported.status !== 200) throw new Error(`${JSON.stringify(imported.body)} ${JSON.stringify(looked.rejected)}`);
    return imported.body as SheetView;
  }

  /** An export as it is saved. */
  async export(kind: SheetKind, format: 'csv' | 'xlsx' = 'csv'): Promise<Buffer> {
    return this.download(`/sheets/exports/${kind}?format=${format}`);
  }

  async download(path: string): Promise<Buffer> {
    const response = await fetch(`${this.url}/api${path}`, { headers: { cookie: this.caller.cookie } });
    if (response.status !== 200) throw new Error(`${path} answered ${response.status}: ${await response.text()}`);
    return Buffer.from(await response.arrayBuffer());
  }
}

/** What is said of the rejected rows: `row column code`. */
export function said({ rejected }: SheetView): string[] {
  return rejected.flatMap(({ row, problems }) =>
    problems.map(({ heading, code }) => `${row} ${heading ?? '-'} ${code}`),
  );
}

/** A file with the kind's own headings. */
export function csvFor(kind: SheetKind, rows: readonly Readonly<Record<string, string>>[]): string {
  const fields = [...new Set(rows.flatMap((row) => Object.keys(row)))];
  const headings = fields.map((field) => kindOf(kind).columns[field]!.heading);
  const cell = (text: string) => (/[",\n\r]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);
  return [headings, ...rows.map((row) => fields.map((field) => row[field] ?? ''))]
    .map((row) => row.map(cell).join(','))
    .join('\r\n');
}
