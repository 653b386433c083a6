import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import Ajv from 'ajv/dist/2020';
import { usualStanding, writeRulebook, type Rulebook } from '../fit-rules';
import { Draw, stream } from '../fit-rules/testing/random-book';
import { readRulebookDocument } from './read-rulebook-document';
import { rulebookJsonSchema } from './rulebook-json-schema';
import { rulebookDocument, rulebookOfDocument, type RulebookDocumentInput } from './rulebook-file';

const EXAMPLE = join(__dirname, '..', '..', 'docs', 'examples', 'rulebook.json');
const example = (): RulebookDocumentInput => JSON.parse(readFileSync(EXAMPLE, 'utf8')) as RulebookDocumentInput;

/** A random rulebook of things that a file can hold: every paper has a title, every rule says something. */
function drawn(seed: number): Rulebook {
  const { rules, sources, ...rest } = new Draw(stream(seed)).rulebook();
  return {
    ...rest,
    rules: rules.filter(({ required, allowed, barred, replaces }) => {
      return required !== null || allowed.length + barred.length + replaces.length > 0;
    }),
    sources: sources.map((source) => ({ ...source, title: 'a paper' })),
  };
}

const problemsOf = (document: unknown): string[] => {
  const read = readRulebookDocument(document);
  return read.ok ? [] : read.problems.map(({ path, sentence }) => `${path.join('.')} | ${sentence}`);
};

describe('the rulebook file', () => {
  it('gives back every rulebook as it was written, through JSON', () => {
    for (let seed = 1; seed <= 100; seed++) {
      const book = drawn(seed);
      const file = { format: 'revright-rulebook', version: 1, ...writeRulebook(book) };
      const read = readRulebookDocument(JSON.parse(JSON.stringify(file)));
      if (!read.ok) throw new Error(`seed ${seed}: ${read.problems[0]!.sentence}`);
      expect(rulebookOfDocument(read.document)).toEqual(book);
    }
  });

  it('reads what it wrote as the same document, defaults filled in', () => {
    const once = rulebookDocument.parse(example());
    expect(rulebookDocument.parse(JSON.parse(JSON.stringify(once)))).toEqual(once);
  });

  it('needs no more than its format, its version, papers and rules', () => {
    const read = readRulebookDocument({ format: 'revright-rulebook', version: 1, sources: [], rules: [] });
    expect(read.ok && read.document.standing).toEqual(usualStanding);
  });

  it('names the entry, the field, the value and what would be accepted', () => {
    const file = example();
    const [rule] = file.rules;
    const broken = {
      ...file,
      rules: [{ ...rule!, required: 'braken/30-1120', built: { from: '2017-02-30', to: null } }],
    };
    expect(problemsOf(broken)).toEqual([
      `rules.0.built.from | rule ${rule!.key}, built.from: "2017-02-30" will not do: must be a day that exists, written YYYY-MM-DD.`,
      `rules.0.required | rule ${rule!.key}, required: "braken/30-1120" will not do: must be MAKER/NUMBER in canonical form, such as HOLM/70412B.`,
    ]);
  });

  it.each([
    [
      'another format',
      (f: RulebookDocumentInput) => ({ ...f, format: 'parts' }),
      'format | format: "parts" will not do',
    ],
    ['a later version', (f: RulebookDocumentInput) => ({ ...f, version: 2 }), 'version | version: 2 will not do'],
    ['a field it does not know', (f: RulebookDocumentInput) => ({ ...f, owners: [] }), ' | the file:'],
    [
      'a code that stands twice',
      (f: RulebookDocumentInput) => ({ ...f, makers: [...f.makers!, f.makers![0]!] }),
      'makers.1.code | maker BRAKEN, code: stands there twice',
    ],
    [
      'a line whose maker is not there',
      (f: RulebookDocumentInput) => ({ ...f, lines: [{ ...f.lines![0]!, maker: 'HOLM' }] }),
      'lines.0.maker | line 1, maker: "HOLM" is no maker of this file',
    ],
    [
      'a rule whose source is not there',
      (f: RulebookDocumentInput) => ({ ...f, sources: f.sources.slice(1) }),
      'rules.0.source | rule DRIFTBREAK-AUG-PIN-1, source: "DRIFTBREAK-manual" will not do',
    ],
    [
      'a rule of which two versions are known at once',
      (f: RulebookDocumentInput) => ({ ...f, rules: [...f.rules, { ...f.rules[0]!, version: 2 }] }),
      'known | rule DRIFTBREAK-AUG-PIN-1, known: versions 1 and 2 are known at the same time',
    ],
    [
      'production that ends before it begins',
      (f: RulebookDocumentInput) => ({ ...f, lines: [{ ...f.lines![0]!, producedUntil: '2001-01-01' }] }),
      'lines.0.producedUntil | line DRIFTBREAK, producedUntil: "2001-01-01" will not do',
    ],
  ])('refuses %s', (_what, change, expected) => {
    expect(problemsOf(change(example())).join('\n')).toContain(expected);
  });
});

describe('the JSON Schema of the rulebook file', () => {
  const accepts = new Ajv({ strict: false, validateFormats: false }).compile(rulebookJsonSchema());

  it('accepts the example, as a person may write it', () => {
    expect(accepts(example())).toBe(true);
  });

  it.each([
    [
      'a part key that is none',
      (f: RulebookDocumentInput) => ({ ...f, rules: [{ ...f.rules[0]!, required: '30-1120' }] }),
    ],
    [
      'a day that is none',
      (f: RulebookDocumentInput) => ({ ...f, sources: [{ ...f.sources[0]!, issued: '1 May 2017' }] }),
    ],
    [
      'a kind of paper that is none',
      (f: RulebookDocumentInput) => ({ ...f, sources: [{ ...f.sources[0]!, kind: 'rumour' }] }),
    ],
    ['a field it does not know', (f: RulebookDocumentInput) => ({ ...f, owners: [] })],
    [
      'a position without a place',
      (f: RulebookDocumentInput) => ({
        ...f,
        lines: [{ ...f.lines![0]!, positions: [{ code: 'A', name: 'A', assembly: 'A', places: [] }] }],
      }),
    ],
  ])('refuses %s', (_what, change) => {
    expect(accepts(change(example()))).toBe(false);
  });
});
