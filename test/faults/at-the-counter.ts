import { startApi, type RunningApi } from '../../apps/api/src/start-api';
import { readConfig } from '../../libs/config';
import { hashPassword } from '../../libs/store';
import type { House } from './house';

const PASSWORD = 'a long enough password';

/** The API inside this process, on the house's database. */
export async function openApi(house: House): Promise<RunningApi> {
  const read = readConfig({
    DATABASE_URL: house.url,
    PORT: '0',
    TIME_ZONE: 'UTC',
    LOG_LEVEL: 'silent',
    NODE_ENV: 'test',
  });
  if (!read.ok) throw new Error(read.problems.join(' '));
  return startApi({ config: read.config, store: house.shop.store });
}

/** The cookie of the house's manager, signed in at that address. */
export async function signIn(house: House, url: string): Promise<string> {
  await house.pool.query('UPDATE person SET password_hash = $1 WHERE id = 1', [await hashPassword(PASSWORD)]);
  const answer = await fetch(`${url}/api/session`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ login: 'mara', password: PASSWORD }),
  });
  if (!answer.ok) throw new Error(`signing in was answered with ${answer.status}: ${await answer.text()}`);
  return answer.headers.getSetCookie()[0]!.split(';')[0]!;
}
