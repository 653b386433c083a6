import type { Config } from '../../../libs/config';
import { asProgram, sealsOf } from '../../../libs/store';
import { renewSeals, type Store } from '../../../libs/usecases';

/** After the key was changed: seals everything with the new one; sentences for the console. Nothing without a key from before. */
export async function sealWithNewKey(store: Store, config: Config): Promise<readonly string[]> {
  if (config.keyBefore === undefined) return [];
  const { secondFactors, webhooks, mailServer } = await asProgram(() => renewSeals(store, sealsOf(config)));
  const password = mailServer.renewed > 0 ? ' and the password of the mail server' : '';
  const done = `${secondFactors.renewed} second factors and ${webhooks.renewed} webhooks${password} were sealed with the new key.`;
  const [people, addresses] = [secondFactors.lost, webhooks.lost];
  if (people.length + addresses.length + mailServer.lost.length === 0)
    return [`${done} Take REVRIGHT_KEY_BEFORE away now.`];
  const reset = `reset the second factors of people ${list(people)} and add webhooks ${list(addresses)} anew${mailServer.lost.length > 0 ? ', and type the password of the mail server anew' : ''}`;
  return [`${done} Neither key opens the rest: is REVRIGHT_KEY_BEFORE the right one? Else ${reset}.`];
}

const list = (numbers: readonly number[]): string => (numbers.length === 0 ? '(none)' : numbers.join(', '));
