import { dirname, join } from 'node:path';

/** The fonts of a print, by name; every glyph comes from these files, none from a network. */
export const FONTS = {
  Words: faces('next', 'latin'),
  WordsMore: faces('next', 'latin-ext'),
  Numbers: faces('mono', 'latin'),
  NumbersMore: faces('mono', 'latin-ext'),
  /** Greek and Cyrillic, which the house's own face does not have. */
  Other: other(),
};

export type FontName = keyof typeof FONTS;

function faces(kind: 'next' | 'mono', part: 'latin' | 'latin-ext'): { normal: string; bold: string } {
  const root = dirname(require.resolve(`@fontsource/atkinson-hyperlegible-${kind}/package.json`));
  const file = (weight: number) => join(root, 'files', `atkinson-hyperlegible-${kind}-${part}-${weight}-normal.woff`);
  return { normal: file(400), bold: file(700) };
}

function other(): { normal: string; bold: string } {
  const root = join(dirname(require.resolve('pdfmake/package.json')), 'fonts', 'Roboto');
  return { normal: join(root, 'Roboto-Regular.ttf'), bold: join(root, 'Roboto-Medium.ttf') };
}

/** The folders fonts may be read from; a print reads no other file. */
export const FONT_FILES: ReadonlySet<string> = new Set(Object.values(FONTS).flatMap((one) => [one.normal, one.bold]));
