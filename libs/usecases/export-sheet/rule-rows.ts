import { fitRuleFile, type FitRuleFile } from '../../fit-rules';
import type { BulletinRecord, Tables } from '../ports/index';
import type { Values } from './catalogue-rows';

/** Rules of papers that are published, as they are known now, and of drafts as they would be opened. */
export async function* ruleRows({ bulletins, rulebook }: Tables): AsyncGenerator<readonly Values[]> {
  for (const { id, state } of [...(await bulletins.list())].reverse()) {
    if (state === 'withdrawn') continue;
    const paper = (await bulletins.find(id))!;
    const rules =
      state === 'draft'
        ? (paper.draft?.opens ?? []).flatMap((one) => {
            const read = fitRuleFile.safeParse(one);
            return read.success ? [read.data] : [];
          })
        : (await rulebook.versionsOfSource(id)).filter(({ closedBy }) => closedBy === null).map(({ rule }) => rule);
    yield rules.map((rule) => rowOf(paper, rule));
  }
}

function rowOf(paper: BulletinRecord, rule: FitRuleFile): Values {
  return {
    paper: paper.number,
    publisher: paper.publisher,
    paperKind: paper.kind,
    title: paper.title,
    issued: paper.issued,
    effective: paper.effective,
    received: paper.received,
    summary: paper.summary,
    key: rule.key,
    line: rule.line,
    models: rule.models,
    options: rule.options,
    positions: rule.positions,
    builtFrom: rule.built.from,
    builtUntil: rule.built.to,
    scheme: rule.serials?.scheme ?? null,
    serialFrom: rule.serials?.from ?? null,
    serialUntil: rule.serials?.to ?? null,
    inForceFrom: rule.inForce.from,
    inForceUntil: rule.inForce.to,
    required: rule.required,
    allowed: rule.allowed,
    barred: rule.barred,
    action: rule.action,
    replaces: rule.replaces,
  };
}
