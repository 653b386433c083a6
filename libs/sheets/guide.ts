import { KINDS, SHEET_KINDS, kindOf } from './all-kinds';

/** The columns of every kind as tables in Markdown: what docs/spreadsheets.md holds, and a test compares. */
export function columnsGuide(): string {
  return SHEET_KINDS.map((id) => {
    const { title, about } = KINDS[id];
    const rows = Object.values(kindOf(id).columns).map(({ heading, required, says, example, also }) => {
      const known = also.length === 0 ? '' : ` Also known as: ${also.join(', ')}.`;
      return `| ${heading}${required ? ' (must be there)' : ''} | ${cell(says + known)} | ${example === '' ? '' : `\`${cell(example)}\``} |`;
    });
    return [`### ${title}`, '', about, '', '| column | what it holds | example |', '| --- | --- | --- |', ...rows].join(
      '\n',
    );
  }).join('\n\n');
}

const cell = (text: string): string => text.replaceAll('|', '\\|');
