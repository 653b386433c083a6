import { readPartNumber, type NumberRules } from '../../../part-number';
import type { MakerSheetRow } from '../../../sheets';
import { added, alike, changed, problem, rejected, same, settled, type KindRun, type OpenKind } from '../kind-work';
import { SaidBefore } from '../said-before';
import { newRevision } from '../new-revision';

/** Makers and how they write part numbers. */
export const openMakers: OpenKind = async ({ tx, actor }): Promise<KindRun> => {
  const known = new Map((await tx.catalogue.makers()).map((maker) => [maker.code, maker]));
  const said = new SaidBefore();
  let writes: { code: string; name: string; numberRules: NumberRules }[] = [];
  return {
    async weigh(rows) {
      writes = [];
      const weighed = [];
      for (const { n, values } of rows) {
        const row = values as unknown as MakerSheetRow;
        const before = known.get(row.code);
        const again = said.look(n, row.code, row, `maker ${row.code}`);
        if (again) {
          weighed.push(again);
          continue;
        }
        const rules = rulesOf(row, before?.numberRules);
        const wrong = before && !alike(rules, before.numberRules) ? await otherwise(tx, row.code, rules) : null;
        if (wrong) {
          weighed.push(rejected(n, problem('noise', 'conflict', wrong)));
          continue;
        }
        if (before && before.name === row.name && alike(rules, before.numberRules)) {
          weighed.push(same(n));
          continue;
        }
        writes.push({ code: row.code, name: row.name, numberRules: rules });
        weighed.push(before ? changed(n) : added(n));
      }
      return weighed;
    },
    write: () => tx.bulk.saveMakers(writes),
    finish: () => newRevision(tx, actor),
  };
};

function rulesOf({ code, noise, packMarks, letter }: MakerSheetRow, kept?: NumberRules): NumberRules {
  return {
    makerCode: code,
    noise: settled(noise, kept?.noise, ''),
    packMarks: [...settled(packMarks, kept?.packMarks, [])],
    trailingLetterIsRevision: settled(letter, kept?.trailingLetterIsRevision, true),
  };
}

/** Parts are known by their numbers as the maker's rules read them, so the rules must go on reading them alike. */
async function otherwise(tx: Parameters<OpenKind>[0]['tx'], maker: string, rules: NumberRules): Promise<string | null> {
  const parts = await tx.bulk.numbersOf(maker);
  const other = parts.find(({ number, canonical }) => {
    const reading = readPartNumber(number, rules);
    return !reading.ok || reading.number.canonical !== canonical;
  });
  return other
    ? `By these rules part ${other.number} of ${maker} would be read as another; its parts were read by the rules on file.`
    : null;
}
