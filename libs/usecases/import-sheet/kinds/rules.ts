import { groupBy } from '../../group-by';
import { formatDay } from '../../../day';
import type { RuleSheetRow } from '../../../sheets';
import type { SaveBulletin } from '../../../contracts';
import type { BulletinRecord, ReadSheetRow, WeighedRow } from '../../ports/index';
import { DraftGoneStale, publishIn } from '../../publish-bulletin/publish-bulletin';
import { bulletinKey, checkDraftOn, draftGround, type DraftGround } from '../../save-bulletin/save-bulletin';
import { ImportRefused } from '../import-refused';
import {
  added,
  alike,
  changed,
  problem,
  rejected,
  same,
  type KindContext,
  type KindRun,
  type OpenKind,
} from '../kind-work';
import { ruleOfRow, sameRules, type RuleOfRow } from './rule-of-row';
import { TicketParts } from './ticket-parts';

interface Row {
  readonly n: number;
  readonly row: RuleSheetRow;
}

interface PaperPlan {
  readonly key: string;
  readonly input: SaveBulletin;
  readonly before: BulletinRecord | null;
}

/** Fit rules of papers: each paper becomes a draft, or is published, by the same steps as one that is typed. */
export const openRules: OpenKind = async (context): Promise<KindRun> => {
  const run = new RulesRun(context);
  await run.open();
  return run;
};

class RulesRun implements KindRun {
  private parts!: TicketParts;
  private byKey = new Map<string, number>();
  private plans: PaperPlan[] = [];
  private recheckId: number | null = null;

  constructor(private readonly context: KindContext) {}

  async open(): Promise<void> {
    const { tx } = this.context;
    this.parts = await TicketParts.of(tx);
    this.byKey = new Map(
      (await tx.bulletins.list()).map(({ publisher, number, id }) => [paperName(publisher, number), id]),
    );
  }

  async weigh(rows: readonly ReadSheetRow[]): Promise<readonly WeighedRow[]> {
    this.plans = [];
    const all = rows.map(({ n, key, values }) => ({ n, key, row: values as unknown as RuleSheetRow }));
    await this.parts.load(
      all.flatMap(({ row }) => [row.required, ...(row.allowed ?? []), ...(row.barred ?? []).map(({ part }) => part)]),
    );
    const weighed: WeighedRow[] = [];
    const ground = await draftGround(this.context.tx, this.context);
    for (const group of groupBy(all, ({ key }) => key).values())
      weighed.push(...(await this.weighPaper(group, ground)));
    return weighed;
  }

  private async weighPaper(group: readonly Row[], ground: DraftGround): Promise<WeighedRow[]> {
    const [first] = group as readonly [Row, ...Row[]];
    const problems = new Map<number, WeighedRow>();
    const opens: RuleOfRow[] = [];
    for (const { n, row } of group) {
      const odd = HEAD.find((field) => !alike(row[field] ?? null, first.row[field] ?? null));
      if (odd) {
        problems.set(
          n,
          rejected(
            n,
            problem(
              odd,
              'conflict',
              `Row ${first.n} of paper ${row.paper} says "${String(first.row[odd] ?? '')}"; make them agree.`,
            ),
          ),
        );
        continue;
      }
      const rule = ruleOfRow(row, this.parts);
      if ('says' in rule) problems.set(n, rejected(n, rule));
      else opens.push(rule);
    }
    const { publisher, paper } = first.row;
    const onFile = this.byKey.get(paperName(publisher, paper));
    const before = onFile === undefined ? null : await this.context.tx.bulletins.find(onFile);
    const key = before?.key ?? bulletinKey({ publisher, number: paper });
    // A sheet has no column for the rules a paper ends: those of a draft on file stay.
    const input = this.inputOf(first.row, opens, before?.draft?.ends ?? []);
    if (problems.size > 0) return this.whole(group, problems);
    if (before && before.state !== 'draft') return this.onFile(group, before, opens);
    const checked = checkDraftOn(ground, key, input);
    if (!checked.ok) return this.whole(group, problemsByRow(checked.problems, group));
    const stays = before !== null && !this.context.publish && sameDraft(before, input, checked.draft);
    if (stays) return group.map(({ n }) => same(n));
    this.plans.push({ key, input: { ...input, draft: checked.draft }, before });
    return group.map(({ n }) => (before ? changed(n) : added(n)));
  }

  private inputOf(row: RuleSheetRow, opens: readonly RuleOfRow[], ends: SaveBulletin['draft']['ends']): SaveBulletin {
    return {
      kind: row.paperKind ?? 'service-bulletin',
      publisher: row.publisher,
      number: row.paper,
      title: row.title,
      summary: row.summary ?? '',
      issued: row.issued,
      effective: row.effective ?? null,
      received: row.received ?? formatDay(this.context.clock.today()),
      draft: { opens: opens.map((rule) => ({ ...rule })), ends },
    };
  }

  /** A paper goes in whole. */
  private whole(group: readonly Row[], problems: ReadonlyMap<number, WeighedRow>): WeighedRow[] {
    const [at] = [...problems.keys()];
    return group.map(
      ({ n, row }) =>
        problems.get(n) ??
        rejected(n, problem(null, 'conflict', `Paper ${row.paper} goes in whole, and its row ${at} is rejected.`)),
    );
  }

  /** A paper that is published stays as it is: a row of it either says what is on file or is rejected. */
  private async onFile(
    group: readonly Row[],
    before: BulletinRecord,
    opens: readonly RuleOfRow[],
  ): Promise<WeighedRow[]> {
    const kept = await this.context.tx.rulebook.versionsOfSource(before.id);
    return group.map(({ n, row }, at) => {
      const versions = kept.filter(({ rule }) => rule.key === row.key);
      const on = before.effective ?? before.issued;
      if (versions.some(({ rule }) => sameRules(rule, opens[at]!, on))) return same(n);
      return rejected(
        n,
        problem(
          'paper',
          'conflict',
          `Paper ${row.paper} is ${before.state} and says otherwise; what has changed stands in a paper of its own.`,
        ),
      );
    });
  }

  async write(): Promise<void> {
    const { tx } = this.context;
    const fresh = this.plans.filter(({ before }) => before === null);
    const ids = await tx.bulletins.insertMany(fresh.map(({ key, input }) => ({ ...input, key })));
    for (const { key, input, before } of this.plans) {
      const paper = `Paper ${input.number} of ${input.publisher}`;
      if (before && (await tx.bulletins.lock(before.id))?.version !== before.version)
        throw new ImportRefused(`${paper} was changed meanwhile; look at the file again.`);
      if (before) await tx.bulletins.update(before.id, input);
      const id = before?.id ?? ids.get(key);
      if (id === undefined) throw new ImportRefused(`${paper} came on file meanwhile; look at the file again.`);
      if (this.context.publish) await this.publish(id, paper);
    }
    await tx.live.tell('bulletin', null);
  }

  /** Publishes a draft; the papers before it in the file are published already, and it may no longer fit with them. */
  private async publish(id: number, paper: string): Promise<void> {
    const { tx, clock, actor } = this.context;
    const version = (await tx.bulletins.find(id))!.version;
    const published = await publishIn(tx, clock, actor, { id, version }).catch((error: unknown) => {
      if (!(error instanceof DraftGoneStale)) throw error;
      throw new ImportRefused(
        `${paper} does not fit with what is published before it, so nothing is imported: ${error.problems.join(' ')}`,
      );
    });
    if (!published.ok) throw new ImportRefused(published.refusal.detail);
    this.recheckId = published.value.recheckId;
  }

  finish(): Promise<number | null> {
    return Promise.resolve(this.recheckId);
  }
}

const paperName = (publisher: string, number: string): string =>
  JSON.stringify([publisher.toLowerCase(), number.toLowerCase()]);

const HEAD = ['title', 'paperKind', 'issued', 'effective', 'received', 'summary'] as const;

/** What a draft's entry says; which version it is and where it stands, it only gets when it is published. */
function saysOf({
  version: _version,
  source: _source,
  known: _known,
  ...rule
}: SaveBulletin['draft']['opens'][number]) {
  return rule;
}

function sameDraft(before: BulletinRecord, input: SaveBulletin, draft: SaveBulletin['draft']): boolean {
  const { kind, title, summary, issued, effective, received } = before;
  const head = { kind, title, summary, issued, effective, received };
  const given = {
    kind: input.kind,
    title: input.title,
    summary: input.summary,
    issued: input.issued,
    effective: input.effective,
    received: input.received,
  };
  return alike(head, given) && alike((before.draft?.opens ?? []).map(saysOf), draft.opens.map(saysOf));
}

/** `opens[3]: ...` is said of the fourth row of the paper; what names no entry, of its first. */
function problemsByRow(problems: readonly string[], group: readonly Row[]): ReadonlyMap<number, WeighedRow> {
  const byRow = groupBy(problems, (one) => group[Number(/opens\[(\d+)\]/.exec(one)?.[1] ?? 0)]?.n ?? group[0]!.n);
  return new Map(
    [...byRow].map(([n, all]) => [
      n,
      rejected(n, ...all.map((one) => problem(null, 'not-accepted', one.replace(/^opens\[\d+\][:.]?\s*/, '')))),
    ]),
  );
}
