import type { SheetKind } from '../../../../../libs/sheets';

/** What each kind is called on the page, in the order an empty shop needs them. */
export const KIND_WORDS: Readonly<Record<SheetKind, { readonly title: string; readonly needs: string }>> = {
  makers: { title: 'Makers', needs: '' },
  lines: { title: 'Product lines and models', needs: 'Makers come first.' },
  positions: { title: 'Positions', needs: 'Lines come first.' },
  parts: { title: 'Parts', needs: 'Makers come first.' },
  supersessions: { title: 'Which part gives way to which', needs: 'Makers come first.' },
  schemes: { title: 'Serial schemes', needs: 'Makers and lines come first.' },
  rules: { title: 'Fit rules of papers', needs: 'Lines, positions and makers come first.' },
  owners: { title: 'Owners and their units', needs: 'Lines come first, for the units.' },
  tickets: { title: 'Past tickets and their parts', needs: 'Units and positions come first.' },
};

export const ENCODING_WORDS: readonly { readonly value: string; readonly label: string }[] = [
  { value: 'utf-8', label: 'UTF-8' },
  { value: 'windows-1252', label: 'Western European (Windows)' },
  { value: 'iso-8859-15', label: 'Western European (with euro)' },
  { value: 'windows-1250', label: 'Central European (Windows)' },
  { value: 'windows-1251', label: 'Cyrillic (Windows)' },
  { value: 'macintosh', label: 'Western European (old Macintosh)' },
  { value: 'utf-16le', label: 'UTF-16' },
  { value: 'utf-16be', label: 'UTF-16, the other way round' },
  { value: 'shift_jis', label: 'Japanese' },
];
