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
