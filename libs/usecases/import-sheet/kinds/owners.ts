import { groupBy } from '../../group-by';
import { inferUnit, evidenceOf, preparedShop } from '../../build-days/index';
import type { PreparedShop } from '../../../build-date';
import { sightOf } from '../../actor';
import { hasValue, ownerKey, type CellProblem, type OwnerSheetRow } from '../../../sheets';
import type { BulkOwner, BulkUnit, NewBulkOwner, ReadSheetRow, WeighedRow } from '../../ports/index';
import {
  added,
  alike,
  canonical,
  changed,
  problem,
  rejected,
  same,
  type KindContext,
  type KindRun,
  type OpenKind,
} from '../kind-work';
import { SaidBefore } from '../said-before';
import { recheckOf, scopeOfLines } from '../new-revision';
import { contradictions, ownerFields, ownerPlan, ownerProblem, toAgree, type OwnerSaid } from './owner-of-rows';
import { squeezed, unitFinder, type FoundUnit, type NamedUnit } from './find-unit';
import { unitOfRow, unitProblems, unitStays, type RowUnit } from './units-of-rows';

/** What is planned for one owner: null `before` is a new one. */
interface OwnerPlan {
  readonly before: BulkOwner | null;
  readonly owner: NewBulkOwner;
  readonly changes: boolean;
  readonly units: RowUnit[];
}

interface Row {
  readonly n: number;
  readonly row: OwnerSheetRow;
}

/** A row that goes in; null where it is about an owner alone. */
interface AcceptedRow extends Row {
  readonly unit: RowUnit | null;
}

/** Owners with their units. An owner is the same by number, or else by name and phone (or e-mail). */
export const openOwners: OpenKind = async (context): Promise<KindRun> => {
  const run = new OwnersRun(context);
  await run.open();
  return run;
};

class OwnersRun implements KindRun {
  private readonly byId = new Map<number, BulkOwner>();
  private readonly byKey = new Map<string, BulkOwner[]>();
  private lines: ReadonlyMap<string, Awaited<ReturnType<KindContext['tx']['catalogue']['lines']>>[number]> = new Map();
  private readonly said = new SaidBefore();
  private readonly touched = new Set<string>();
  private plans: OwnerPlan[] = [];

  constructor(private readonly context: KindContext) {}

  async open(): Promise<void> {
    const { tx, actor } = this.context;
    this.lines = new Map((await tx.catalogue.lines()).map((line) => [line.code, line]));
    for (const owner of await tx.bulk.owners(sightOf(actor))) {
      this.byId.set(owner.id, owner);
      const key = ownerKey(owner);
      const alikes = this.byKey.get(key);
      if (alikes) alikes.push(owner);
      else this.byKey.set(key, [owner]);
    }
  }

  async weigh(rows: readonly ReadSheetRow[]): Promise<readonly WeighedRow[]> {
    this.plans = [];
    const { tx, actor } = this.context;
    const all = rows.map(({ n, key, values }) => ({ n, key, row: values as unknown as OwnerSheetRow }));
    const find = await unitFinder(
      tx,
      all.map(({ row }) => row),
      sightOf(actor),
    );
    const groups = groupBy(all, ({ key }) => key);
    const bare = await this.bareUnits([...groups.values()]);
    return [...groups].flatMap(([key, group]) => this.weighOwner(key, group, find, bare));
  }

  /** Units without a serial are told by owner, line, model and plate. */
  private async bareUnits(groups: readonly (readonly Row[])[]): Promise<ReadonlyMap<number, BulkUnit[]>> {
    const ids = groups
      .filter((group) => group.some(({ row }) => row.line && !row.serial && !row.unitNumber))
      .flatMap(([first]) => this.ownerOf(first!.row).map(({ id }) => id));
    if (ids.length === 0) return new Map();
    return groupBy(await this.context.tx.bulk.bareUnits(ids), ({ ownerId }) => ownerId);
  }

  private ownerOf(row: OwnerSheetRow): readonly BulkOwner[] {
    if (row.ownerNumber) return [this.byId.get(row.ownerNumber)].filter((one) => one !== undefined);
    const all = this.byKey.get(ownerKey(row)) ?? [];
    const here = all.filter(({ locationId }) => locationId === this.context.actor.locationId);
    return here.length > 0 ? here : all;
  }

  private weighOwner(
    key: string,
    group: readonly Row[],
    find: (row: NamedUnit) => FoundUnit,
    bare: ReadonlyMap<number, BulkUnit[]>,
  ): WeighedRow[] {
    const [first] = group;
    const found = this.ownerOf(first!.row);
    const wrong = ownerProblem(first!.row, found);
    if (wrong) return group.map(({ n }) => rejected(n, wrong));
    const before = found[0] ?? null;
    const given: OwnerSaid = {};
    const judged = group.map((one): WeighedRow | AcceptedRow => {
      const problems = [
        ...contradictions(one.row, given, first!.n),
        ...unitProblems(one.row, this.lines.get(one.row.line ?? '')),
      ];
      if (problems.length > 0) return rejected(one.n, ...problems);
      const unit = this.weighUnit(key, one, before, find, bare);
      if (unit !== null && 'says' in unit) return rejected(one.n, unit);
      if (unit !== null && 'outcome' in unit) return unit;
      for (const field of toAgree(one.row)) if (hasValue(one.row[field])) given[field] ??= one.row[field] ?? undefined;
      return { ...one, unit };
    });
    // What a rejected row says of the owner is left out with it.
    const accepted = judged.filter((one) => 'unit' in one);
    if (accepted.length === 0) return judged as WeighedRow[];
    const owner = ownerPlan(before, accepted, this.context.actor.locationId);
    const changes = before === null || !alike(ownerFields(before), ownerFields(owner));
    this.plans.push({ before, owner, changes, units: accepted.flatMap(({ unit }) => unit ?? []) });
    return judged.map((one) => {
      if (!('unit' in one)) return one;
      const { n, unit } = one;
      // The first of them brings the owner along.
      const owns = one !== accepted[0] || !changes ? null : before === null ? added(n) : changed(n);
      if (unit === null) return owns ?? same(n);
      if (!unit.before) return added(n);
      const stays = unitStays(unit) && before !== null && unit.before.ownerId === before.id;
      return stays ? (owns ?? same(n)) : changed(n);
    });
  }

  /** The row's unit, null where it has none, what is wrong with it, or that an earlier row said the same. */
  private weighUnit(
    key: string,
    { n, row }: Row,
    owner: BulkOwner | null,
    find: (row: NamedUnit) => FoundUnit,
    bare: ReadonlyMap<number, BulkUnit[]>,
  ): RowUnit | CellProblem | WeighedRow | null {
    if (!row.line && !row.unitNumber) return null;
    const found = find(row);
    if (!found.ok) return found.problem;
    const name = row.unitNumber
      ? `#${row.unitNumber}`
      : row.serial
        ? `${row.line} ${squeezed(row.serial)}`
        : canonical([key, row.line, row.model, row.plate]);
    const again = this.said.look(n, name, { ...row, ownerNumber: 0 }, row.serial ? `unit ${row.serial}` : 'this unit');
    if (again) return again;
    const before = found.unit ?? (row.serial || !owner ? null : bareMatch(row, bare.get(owner.id) ?? []));
    if (before?.hasRecords && row.line && before.line !== null && before.line !== row.line)
      return problem('line', 'conflict', `Parts are recorded for this unit as a ${before.line}; its line stays.`);
    return unitOfRow(row, before);
  }

  async write(): Promise<void> {
    const { tx, actor } = this.context;
    const fresh = this.plans.filter(({ before }) => before === null);
    const ids = await tx.bulk.insertOwners(fresh.map(({ owner }) => owner));
    const idOf = new Map(fresh.map((plan, at) => [plan, ids[at]!]));
    const updates = this.plans.flatMap(({ before, owner, changes }) =>
      before && changes ? [{ ...owner, id: before.id }] : [],
    );
    await tx.bulk.updateOwners(updates);
    const units = this.plans.flatMap((plan) =>
      plan.units.map((one) => ({ ...one, ownerId: plan.before?.id ?? idOf.get(plan)! })),
    );
    const news = units.filter(({ before }) => before === null);
    const shop = news.length === 0 ? null : await preparedShop(tx);
    const unitIds = await tx.bulk.insertUnits(
      news.map(({ unit, ownerId, evidence }) => ({ ...unit, ownerId, ...this.datesOf(unit, evidence, shop!) })),
    );
    const old = units.filter((one) => one.before !== null && (!unitStays(one) || one.before.ownerId !== one.ownerId));
    await tx.bulk.updateUnits(old.map(({ unit, ownerId, before }) => ({ ...unit, ownerId, id: before!.id })));
    const evidence = [
      ...news.flatMap((one, at) => one.evidence.map((piece) => ({ ...piece, unitId: unitIds[at]! }))),
      ...old.flatMap((one) => one.evidence.map((piece) => ({ ...piece, unitId: one.before!.id }))),
    ];
    await tx.bulk.addEvidence(evidence, actor.id);
    for (const { before, unit } of old) if (before!.hasRecords && unit.line) this.touched.add(unit.line);
    await this.dateAnew(old.map(({ before }) => before!.id));
  }

  /** The possible build days of a unit that comes in, by the code that dates a unit every day. */
  private datesOf({ line: code, serial }: RowUnit['unit'], evidence: RowUnit['evidence'], shop: PreparedShop) {
    const line = this.lines.get(code ?? '') ?? null;
    const unit = { serial, line, maker: line?.maker ?? null };
    const rows = evidence.map((piece, id) => ({ ...piece, data: { ...piece.data }, id, setAside: null }));
    return inferUnit(unit, evidenceOf(unit, rows), shop, this.context.clock.today()).columns;
  }

  /** The same for units on file that the rows say something new of. */
  private async dateAnew(ids: readonly number[]): Promise<void> {
    const { tx, clock } = this.context;
    if (ids.length === 0) return;
    const shop = await preparedShop(tx);
    const units = await tx.units.evidenced(ids);
    await tx.units.setBuiltMany(
      units.map((unit) => ({
        id: unit.id,
        ...inferUnit(unit, evidenceOf(unit, unit.evidence), shop, clock.today()).columns,
      })),
    );
  }

  finish(): Promise<number | null> {
    const { tx, actor } = this.context;
    if (this.touched.size === 0) return Promise.resolve(null);
    return recheckOf(tx, actor, scopeOfLines(this.touched, true));
  }
}

function bareMatch({ line, model, plate }: OwnerSheetRow, units: readonly BulkUnit[]): BulkUnit | null {
  return (
    units.find(
      (unit) =>
        unit.line === line &&
        (model === undefined || unit.model === model) &&
        (plate === undefined || unit.plate === (plate ?? '')),
    ) ?? null
  );
}
