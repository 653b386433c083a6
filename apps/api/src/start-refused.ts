import type { Config } from '../../../libs/config';
import { isDemoShop, type Ports } from '../../../libs/usecases';

/** A start that would not be safe; its message is one sentence for whoever started the program. */
export class StartRefused extends Error {}

/** The demo shop's passwords are published, so it may be played with, but not run. */
export async function refuseDemoInProduction({ mode }: Config, ports: Pick<Ports, 'store'>): Promise<void> {
  if (mode !== 'production' || !(await isDemoShop(ports))) return;
  throw new StartRefused(
    'This database holds the demo shop, whose passwords are published: it is not run with NODE_ENV=production. Give the shop a database of its own.',
  );
}
