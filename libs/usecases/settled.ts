import type { Tables } from './ports/store';

/**
 * What is settled together under some keys, with the version that it is changed on. The version is read first: what is
 * changed while the rest is read makes it an old one, never a wrong one.
 */
export async function settled<T extends object>(
  { settings }: Pick<Tables, 'settings'>,
  keys: readonly string[],
  read: () => Promise<T>,
): Promise<T & { readonly version: number }> {
  const version = await settings.versionOf(keys);
  return { ...(await read()), version };
}
