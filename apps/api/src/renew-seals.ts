import { keyOf, type Config } from '../../../libs/config';
import { asProgram, sealsWith } from '../../../libs/store';
import { renewSeals, type Store } from '../../../libs/usecases';

/** The key of today, and that of before while what it sealed is sealed anew. */
export const sealsOf = (config: Pick<Config, 'key' | 'keyBefore' | 'dataFolder'>) =>
  sealsWith(() => keyOf(config), config.keyBefore === undefined ? undefined : Buffer.from(config.keyBefore, 'hex'));

/** After the key was changed: seals everything with the new one; sentences for the console. Nothing without a key from before. */
export async function sealWithNewKey(store: Store, config: Config): Promise<readonly string[]> {
  if (config.keyBefore === undefined) return [];
  const { renewed, lost } = await asProgram(() => renewSeals(store, sealsOf(config)));
  const done = `${renewed} second factors were sealed with the new key.`;
  if (lost.length === 0) return [`${done} Take REVRIGHT_KEY_BEFORE away now.`];
  return [
    `${done} Neither key opens those of ${lost.length} people (number ${lost.join(', ')}): is REVRIGHT_KEY_BEFORE the right one? Else reset them.`,
  ];
}
