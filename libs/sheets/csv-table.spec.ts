import { array, assert, property, string } from 'fast-check';
import { parse } from 'papaparse';
import { csvTable } from './csv-table';

describe('a table of what is typed by people', () => {
  it('is read back by a reader from outside, cell by cell, save for the quote before a formula', () => {
    const rows = array(array(string(), { minLength: 2, maxLength: 4 }), { minLength: 1, maxLength: 5 });
    assert(
      property(rows, (table) => {
        const width = table[0]!.length;
        const even = table.map((row) => [...row, '', ''].slice(0, width));
        const read = parse<string[]>(csvTable(even), { newline: '\r\n', delimiter: ',' }).data.slice(0, -1);
        expect(read.map((row) => row.map((text) => text.replace(/^'(?=[=@\t\r+-])/, '')))).toEqual(
          even.map((row) => row.map((text) => text.replace(/^'(?=[=@\t\r+-])/, ''))),
        );
      }),
    );
  });

  it.each([
    ['=1+1', "'=1+1"],
    ['@cmd', "'@cmd"],
    ['+49 555', "'+49 555"],
    ['-12.50', '-12.50'],
    ['-x', "'-x"],
    ['Ole "the bolt" Brand', '"Ole ""the bolt"" Brand"'],
  ])('writes %s as %s', (text, written) => {
    expect(csvTable([[text]])).toBe(`${written}\r\n`);
  });
});
