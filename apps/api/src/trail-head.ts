import { appendFile } from 'node:fs/promises';
import type { Config } from '../../../libs/config';
import { asProgram } from '../../../libs/store';
import type { Store } from '../../../libs/usecases';
import { jsonLog } from './json-log';

const A_DAY = 24 * 3_600_000;

/**
 * At the start and then once a day says in the log, and adds to the configured file, where the trail of changes ends.
 * Who can change the database can change the whole chain, but not what has left it. Closing waits for the one under way.
 */
export function keepTrailHead({
  store,
  config,
}: {
  store: Store;
  config: Pick<Config, 'auditHeadFile' | 'logLevel'>;
}): {
  close(): Promise<void>;
} {
  // Not by the framework's logger, whose ordinary level is not shown where the configuration says 'info'.
  const log = jsonLog(config, { name: 'trail' });
  const say = async (): Promise<void> => {
    const head = await asProgram(() => store.trail.head());
    if (!head) return;
    log.info(`The trail of changes ends at row ${head.place} with ${head.hash}.`);
    const line = `${new Date().toISOString()} ${head.place} ${head.hash}\n`;
    if (config.auditHeadFile !== undefined) await appendFile(config.auditHeadFile, line);
  };
  const once = () => say().catch((error: unknown) => log.error(`The head of the trail is not kept: ${String(error)}`));
  let underWay = once();
  const timer = setInterval(() => void (underWay = once()), A_DAY);
  timer.unref();
  return {
    close: () => {
      clearInterval(timer);
      return underWay;
    },
  };
}
