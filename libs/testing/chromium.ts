import { installDebianPackage } from './debian-package';
import { onPath } from './on-path';
import { oneAtATime } from './run-folder';

const find = (): string | undefined => onPath('chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable');

/**
 * Full path of a Chromium: from PATH, else installed by apt-get where that is possible. Throws one sentence otherwise:
 * a browser test that cannot run must fail, not be skipped.
 */
export async function chromiumPath(): Promise<string> {
  const found = find();
  if (found) return found;
  return oneAtATime(() => {
    const refusal = find() ? undefined : installDebianPackage('chromium');
    const installed = find();
    if (installed) return installed;
    throw new Error(`The browser tests need Chromium on PATH, and ${refusal ?? 'the package brought none'}.`);
  });
}
