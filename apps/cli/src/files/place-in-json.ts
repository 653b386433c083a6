import { findNodeAtLocation, parseTree, printParseErrorCode, type ParseError } from 'jsonc-parser';
import { countLines } from '../../../../libs/sheet-files';

/** Where a JSON text is broken: line and column from 1, and what is wrong. Null when it is whole. */
export function breakInJson(text: string): { line: number; column: number; what: string } | null {
  const errors: ParseError[] = [];
  parseTree(text, errors, { disallowComments: true, allowTrailingComma: false });
  const [first] = errors;
  if (!first) return null;
  const before = text.slice(0, first.offset);
  const words = printParseErrorCode(first.error)
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .toLowerCase();
  return { line: countLines(before) + 1, column: first.offset - before.lastIndexOf('\n'), what: words };
}

/** The line (from 1) on which the value at each path stands; of a path that is not there, its nearest parent's. */
export function linesOfPaths(text: string, paths: readonly (readonly (string | number)[])[]): readonly number[] {
  const root = parseTree(text);
  return paths.map((path) => {
    for (let end = path.length; end >= 0 && root; end--) {
      const node = findNodeAtLocation(root, [...path.slice(0, end)]);
      if (node) return countLines(text.slice(0, node.offset)) + 1;
    }
    return 1;
  });
}
