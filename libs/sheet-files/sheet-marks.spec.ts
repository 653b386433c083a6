import { sheetMarks } from './sheet-marks';
import { hearXml } from './xml-events';

async function* pieces(text: string): AsyncGenerator<string> {
  for (const half of [text.slice(0, 20), text.slice(20)]) yield await Promise.resolve(half);
}
const sheet = (rows: string) => pieces(`<worksheet><sheetData>${rows}</sheetData></worksheet>`);

describe("a sheet's XML", () => {
  it.each(['<row r="9999999999"/>', '<row r="1048577"/>', '<row r="many"/>', '<row r="1"><c r="A1048577"/></row>'])(
    'is refused where it reaches further than any table: %s',
    async (rows) => {
      await expect(sheetMarks(sheet(rows))).rejects.toThrow(/1048576 rows\.$/);
    },
  );

  it.each([
    ['without a place', '<c/>'.repeat(251), /^Cell 251 of a row holds something; a table has at most 250 columns/],
    ['with a place of small letters', `<c r="a1"/>`.repeat(251), /^Cell a1 holds something; .*250 columns/],
    ['of more letters than a table has', '<c r="AAAAAAAAAAAAAAA1"/>', /^Cell AAAAAAAAAAAAAAA1 holds something/],
  ])('is refused where a cell %s lies beyond the last column', async (_, cells, says) => {
    await expect(sheetMarks(sheet(`<row r="1">${cells}</row>`))).rejects.toThrow(says);
    expect(
      (await sheetMarks(sheet(`<row>${'<c/>'.repeat(250)}</row><row>${'<c/>'.repeat(250)}</row>`))).merged.size,
    ).toBe(0);
  });

  it.each([
    ['a tag', `<row spans="${'x'.repeat(1_200_000)}`],
    ['a text', `<row>${'x'.repeat(1_200_000)}`],
    ['a remark', `<!--${'x'.repeat(1_200_000)}`],
  ])('is refused where %s does not end', async (_, xml) => {
    async function* small() {
      for (let at = 0; at < xml.length; at += 65_536) yield await Promise.resolve(xml.slice(at, at + 65_536));
    }
    await expect(sheetMarks(small())).rejects.toThrow('one piece of more than 1000000 characters');
  });

  it('is taken up to the last row there can be', async () => {
    expect((await sheetMarks(sheet('<row r="1048576"/><row/>'))).merged.size).toBe(0);
  });

  it('says what its attributes mean, not how they are written', async () => {
    const heard: unknown[] = [];
    const open = (_: string, attributes: unknown) => heard.push(attributes);
    await hearXml(pieces('<numFmt formatCode="&quot;am &quot;dd.mm.yyyy;@" numFmtId="170"/>'), { open });
    expect(heard).toEqual([{ formatCode: '"am "dd.mm.yyyy;@', numFmtId: '170' }]);
  });
});
