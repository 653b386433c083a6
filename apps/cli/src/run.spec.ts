import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { runCli } from './testing/run-cli';

const EXAMPLES = join(__dirname, '..', '..', '..', 'docs', 'examples');
const BOOK = join(EXAMPLES, 'rulebook.json');
const INSTALLS = join(EXAMPLES, 'installs.csv');
const TODAY = ['--today', '2026-11-25'];
const COMMANDS = ['judge', 'which', 'date', 'torque', 'check-rules', 'explain', 'example', 'schema'];
const AUGER = ['--line', 'DRIFTBREAK', '--position', 'AUG-PIN'];

const folder = mkdtempSync(join(tmpdir(), 'revright-cli-'));
afterAll(() => rmSync(folder, { recursive: true }));
const place = (name: string): string => join(folder, name);
const kept = (name: string, text: string | Buffer): string => {
  writeFileSync(place(name), text);
  return place(name);
};

describe('every command', () => {
  it.each(COMMANDS)('%s teaches by example and ends well when asked for help', async (command) => {
    const { code, out } = await runCli([command, '--help']);
    expect(code).toBe(0);
    expect(out).toMatch(new RegExp(`Examples?:\\n( {2}\\$ .*revright ${command})`));
  });

  it.each([
    ['an unknown command', ['jugde']],
    ['an unknown option', ['judge', BOOK, INSTALLS, '--speed']],
    ['an argument that is missing', ['judge', BOOK]],
    ['no command', []],
    ['a choice that is none', ['judge', BOOK, INSTALLS, '--format', 'xml']],
    ['a verdict that is none', ['judge', BOOK, INSTALLS, '--fail-on', 'bad']],
    ['a day that is none', ['check-rules', BOOK, '--today', '2026-02-30']],
    ['an instant without its offset', ['check-rules', BOOK, '--known-at', '2026-02-20T10:00']],
  ])('ends with 2 and says so on stderr after %s', async (_what, args) => {
    const { code, out, err } = await runCli(args);
    expect([code, out]).toEqual([2, '']);
    expect(err).not.toBe('');
  });

  it.each([
    ['--part', ['explain', BOOK, ...AUGER, '--part', '', '--built', '2017-03']],
    ['--fitted-on', ['explain', BOOK, ...AUGER, '--part', '30-1120', '--fitted-on', ' ']],
    ['--replay', ['explain', BOOK, '--replay', '']],
    ['--position', ['which', BOOK, '--line', 'DRIFTBREAK', '--position', 'AUG-PIN', '--position', '']],
    ['--serial', ['which', BOOK, '--line', 'DRIFTBREAK', '--serial', '']],
    ['--line', ['which', BOOK, '--line', '']],
    ['--maker', ['date', BOOK, '--maker', '', '--serial', '17C00412']],
    ['--printed', ['date', BOOK, '--line', 'DRIFTBREAK', '--printed', '']],
    ['--fitted', ['torque', BOOK, '--fitted', '', '--required', '30-1120']],
    ['--joint', ['torque', BOOK, '--fitted', '30-1120', '--required', '30-1120', '--joint', '']],
    ['--line', ['check-rules', BOOK, '--line', '']],
    ['--today', ['judge', BOOK, INSTALLS, '--today', '']],
    ['--out', ['schema', '--out', '']],
    ['--only', ['example', 'rulebook', '--only', '']],
    ['<rulebook>', ['check-rules', '']],
    ['<installs>', ['judge', BOOK, '']],
  ])('ends with 2 where %s is given and empty, as when a variable of a script is not set', async (name, args) => {
    const { code, out, err } = await runCli(args);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(name);
    expect(err.trim().split('\n')).toHaveLength(1);
  });
});

describe('a rulebook that cannot be read', () => {
  const problem = async (name: string, text: string | Buffer) => runCli(['check-rules', kept(name, text)]);

  it('is named with the line and column at which it stops being JSON', async () => {
    const { code, err } = await problem('cut.json', '{\n  "format": "revright-rulebook",\n  "version": 1,,\n}');
    expect([code, err]).toEqual([2, `${place('cut.json')}:3:16: this is not JSON: property name expected.\n`]);
  });

  it('is named with the line of the field that will not do', async () => {
    const text = readFileSync(BOOK, 'utf8').replace('"required": "BRAKEN/301127"', '"required": "30-1127"');
    const line = text.slice(0, text.indexOf('"required": "30-1127"')).split('\n').length;
    const { code, err } = await problem('part.json', text);
    expect(code).toBe(2);
    expect(err).toBe(
      `${place('part.json')}:${line}: rule DRIFTBREAK-AUG-PIN-3, required: "30-1127" will not do: must be MAKER/NUMBER in canonical form, such as HOLM/70412B.\n`,
    );
  });

  it.each<[string, object, string]>([
    ['without its rules', { rules: undefined }, 'rules: nothing will not do: must be given, and be a list.'],
    ['whose rules are a text', { rules: 'none' }, 'rules: "none" will not do: must be a list, not a text.'],
    ['of another format', { format: 'parts' }, 'format: "parts" will not do: must be "revright-rulebook".'],
    ['with a field that is none', { rulez: [] }, 'must have no field "rulez"; accepted are $schema, format, version,'],
  ])('is refused in plain words where it is one %s', async (_what, change, expected) => {
    const { code, err } = await problem(
      'odd.json',
      JSON.stringify({ ...JSON.parse(readFileSync(BOOK, 'utf8')), ...change }),
    );
    expect(code).toBe(2);
    expect(err).toContain(expected);
    expect(err).not.toMatch(/[Ii]nvalid|expected|received/);
  });

  it.each([
    ['that is not there', 'gone.json', null, 'gone.json cannot be read: there is no such file.'],
    ['that is a workbook', 'book.json', Buffer.from('PK\u0003\u0004'), 'is a spreadsheet workbook'],
    ['in another encoding', 'latin.json', Buffer.from([0x7b, 0xe9, 0x7d]), 'this is not UTF-8 text'],
  ])('is refused in one sentence when it is a file %s', async (_what, name, bytes, expected) => {
    if (bytes) kept(name, bytes);
    const { code, err } = await runCli(['check-rules', place(name)]);
    expect(code).toBe(2);
    expect(err).toContain(expected);
    expect(err.trim().split('\n')).toHaveLength(1);
  });
});

describe('judge', () => {
  it('ends with 1 exactly when a verdict that was asked about is there', async () => {
    const judge = (...rest: string[]) => runCli(['judge', BOOK, INSTALLS, ...TODAY, ...rest]);
    expect((await judge()).code).toBe(0);
    expect((await judge('--fail-on', 'wrong')).code).toBe(1);
    expect((await judge('--fail-on', 'disputed')).code).toBe(0);
  });

  it('puts a file in its place only when it is whole, and leaves the old one after a run that broke off', async () => {
    const out = kept('verdicts.csv', 'the old answer');
    const broken = kept('broken.csv', `${readFileSync(INSTALLS, 'utf8')}"never closed`);
    expect((await runCli(['judge', BOOK, broken, '--out', out])).code).toBe(2);
    expect(readFileSync(out, 'utf8')).toBe('the old answer');
    expect((await runCli(['judge', BOOK, INSTALLS, '--out', out, ...TODAY])).code).toBe(0);
    expect(readFileSync(out, 'utf8').split('\n')[0]).toBe(
      'Unit,Line,Model,Serial,Options,Position,Place,Part,Fitted on,verdict,required,rule,source,action,could_have_known,says',
    );
    expect(readdirSync(folder).filter((name) => name.endsWith('.part'))).toEqual([]);
  });

  it('says in one sentence that a file cannot be written', async () => {
    const { code, err } = await runCli(['judge', BOOK, INSTALLS, '--out', place('no/such/folder.csv'), ...TODAY]);
    expect([code, err]).toEqual([2, `${place('no/such/folder.csv')} cannot be written: there is no such file.\n`]);
  });

  it('judges its own answer again to the same answer', async () => {
    const first = await runCli(['judge', BOOK, INSTALLS, ...TODAY]);
    const again = await runCli(['judge', BOOK, '-', ...TODAY], first.out);
    expect(again.out).toBe(first.out);
  });

  it('writes no cell that a spreadsheet would run', async () => {
    const table =
      'note,line,position,part\n"=HYPERLINK(""x"")",DRIFTBREAK,AUG-PIN,30-1127\n@SUM,DRIFTBREAK,AUG-PIN,030-1127\n';
    const { out } = await runCli(['judge', BOOK, '-', '--reasons', 'none', ...TODAY], table);
    const [, first, second] = out.split('\n');
    expect(first).toBe(`"'=HYPERLINK(""x"")",DRIFTBREAK,AUG-PIN,30-1127,undecided`);
    expect(second).toBe(`"'@SUM",DRIFTBREAK,AUG-PIN,030-1127,wrong`);
  });

  it('names every bad value of a row with file, line and column, and judges the others', async () => {
    const table = 'line;position;part;fitted_on\nDRIFTBREAK;AUG-PIN;30-1127;\nSNOWY;;3.01E+05;1.2.2017\n';
    const { code, out, err } = await runCli(['judge', BOOK, '-', '--reasons', 'none', '--quiet', ...TODAY], table);
    expect(code).toBe(2);
    expect(out).toBe('line;position;part;fitted_on;verdict\nDRIFTBREAK;AUG-PIN;30-1127;;undecided\n');
    expect(err.split('\n').map((line) => line.split(': ').slice(0, 2).join(': '))).toEqual([
      'stdin:3: column line',
      'stdin:3: column position',
      'stdin:3: column part',
      'stdin:3: column fitted_on',
      '',
    ]);
  });

  it('draws a bar only on a terminal, and wipes it before the summary', async () => {
    const plain = await runCli(['judge', BOOK, INSTALLS, ...TODAY]);
    const terminal = await runCli(['judge', BOOK, INSTALLS, ...TODAY], '', true);
    expect(plain.err).toBe('9 rows judged: 2 right, 1 allowed, 2 outdated, 2 wrong, 2 undecided.\n');
    const wipe = '\u001b[K';
    expect(terminal.err).toBe(`\r[${'#'.repeat(30)}] 100 % 0 rows${wipe}\r${wipe}${plain.err}`);
    expect(terminal.out).toBe(plain.out);
  });
});

describe('the other commands', () => {
  it('which ends with 1 for an unsettled ruling when asked to', async () => {
    const which = (...rest: string[]) => runCli(['which', BOOK, ...AUGER, ...TODAY, '--fail-unsettled', ...rest]);
    expect((await which('--built', '2017-02')).code).toBe(0);
    expect((await which('--built', '2016|2017')).code).toBe(1);
  });

  it('which turns back the papers and the knowledge, each by itself', async () => {
    const required = async (...clock: string[]) => {
      const { out } = await runCli([
        'which',
        BOOK,
        ...AUGER,
        '--built',
        '2017-02',
        ...TODAY,
        '--format',
        'json',
        ...clock,
      ]);
      const { rulings } = JSON.parse(out) as { rulings: { pieces: { outcome: { required?: string } }[] }[] };
      return rulings[0]!.pieces.map(({ outcome }) => outcome.required);
    };
    expect(await required()).toEqual(['BRAKEN/301127']);
    expect(await required('--in-force-on', '2018-01-21')).toEqual(['BRAKEN/301120']);
    expect(await required('--in-force-on', '2018-01-22')).toEqual(['BRAKEN/301127']);
    expect(await required('--known-at', '2018-01-22T00:00:00Z')).toEqual(['BRAKEN/301120']);
  });

  it('date ends with 1 when no day is left, in every form', async () => {
    const args = ['date', BOOK, '--line', 'DRIFTBREAK', '--printed', '2017-03', '--receipt', '2016', ...TODAY];
    for (const format of ['text', 'csv', 'json']) expect((await runCli([...args, '--format', format])).code).toBe(1);
    expect((await runCli([...args, '--format', 'csv'])).out).toBe('built_from,built_to\n');
  });

  it('date refuses evidence that is none, under its own name', async () => {
    const { code, err } = await runCli(['date', BOOK, '--line', 'DRIFTBREAK', '--printed', 'March 2017']);
    expect(code).toBe(2);
    expect(err).toContain('"March 2017" is not a date; write a year (2017), a month (2017-03)');
  });

  it('torque ends with 1 for a class that was asked about', async () => {
    const torque = (...rest: string[]) => runCli(['torque', BOOK, ...AUGER, '--required', '30-1127', ...rest]);
    expect((await torque('--fitted', '30-1150', '--fail-on', 'breaks-later,cannot-tell')).code).toBe(1);
    expect((await torque('--fitted', '30-1120', '--fail-on', 'breaks-later')).code).toBe(0);
  });

  it('torque names what is missing in a fastener, and a position without a joint', async () => {
    const fastener = kept(
      'pin.json',
      '{"diameterMm": -1, "grade": {"kind": "known", "system": "SAE J429", "grade": "5"}}',
    );
    const bad = await runCli(['torque', BOOK, ...AUGER, '--required', '30-1127', '--fitted', fastener]);
    expect([bad.code, bad.err]).toEqual([2, 'fitted.diameterMm is -1; accepted is a length in millimetres above 0.\n']);
    const args = ['--line', 'DRIFTBREAK', '--position', 'IMP-BLT', '--fitted', '30-1120', '--required', '30-1120'];
    expect((await runCli(['torque', BOOK, ...args])).err).toContain('IMP-BLT of DRIFTBREAK has no shear joint');
  });

  it('check-rules ends with 1 on findings of the chosen severity, names that nothing bears among them', async () => {
    const check = (book: string, ...rest: string[]) => runCli(['check-rules', book, ...TODAY, ...rest]);
    expect((await check(BOOK)).code).toBe(0);
    expect((await check(BOOK, '--severity', 'note')).code).toBe(1);
    const slip = kept(
      'slip.json',
      readFileSync(BOOK, 'utf8').replace('"models": [\n        "DB-24"\n      ]', '"models": ["DB-2A"]'),
    );
    const { code, out } = await check(slip, '--format', 'csv');
    expect(code).toBe(1);
    expect(out).toContain('names the model ""DB-2A"", which is not there; there are DB-24, DB-28, DB-32.');
  });

  it('explain judges its own record again to the same answer, whatever the rulebook says by then', async () => {
    const why = place('why.json');
    const args = [
      '--part',
      '30-1120',
      '--built',
      '2017-03',
      '--fitted-on',
      '2018-06-01',
      '--format',
      'json',
      '--out',
      why,
    ];
    expect((await runCli(['explain', BOOK, ...AUGER, ...args, ...TODAY])).code).toBe(0);
    const first = JSON.parse(readFileSync(why, 'utf8')) as { verdict: string; technician: string; judgement: unknown };
    expect(first.verdict).toBe('wrong');
    const empty = kept('empty.json', '{"format":"revright-rulebook","version":1,"sources":[],"rules":[]}');
    const again = await runCli(['explain', empty, '--replay', why, '--format', 'json', '--fail-on', 'wrong']);
    expect(again.code).toBe(1);
    expect((JSON.parse(again.out) as typeof first).judgement).toMatchObject({
      verdict: 'wrong',
      parts: ['BRAKEN/301120'],
    });
  });
});
