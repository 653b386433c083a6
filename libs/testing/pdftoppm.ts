import { installDebianPackage } from './debian-package';
import { onPath } from './on-path';
import { oneAtATime } from './run-folder';

const find = (): string | undefined => onPath('pdftoppm');

/**
 * Full path of poppler's pdftoppm, which draws the pages of a PDF as dots: from PATH, else installed by apt-get where
 * that is possible. Throws one sentence otherwise: a print that cannot be looked at is not read back.
 */
export async function pdftoppmPath(): Promise<string> {
  const found = find();
  if (found) return found;
  return oneAtATime(() => {
    const refusal = find() ? undefined : installDebianPackage('poppler-utils');
    const installed = find();
    if (installed) return installed;
    throw new Error(`Reading prints back needs pdftoppm on PATH, and ${refusal ?? 'the package brought none'}.`);
  });
}
