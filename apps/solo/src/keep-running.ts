import { readConfig, type Config } from '../../../libs/config';
import { runSolo, type OpenParts, type Solo } from './run-solo';

const say = (sentence: string): void => void process.stdout.write(`${sentence}\n`);

/** Says the sentences on stderr and ends the program with code 1. */
function giveUp(...sentences: readonly string[]): never {
  for (const sentence of sentences) process.stderr.write(`${sentence}\n`);
  process.exit(1);
}

/**
 * The life of the program: reads the environment, starts, says where, and stops cleanly at Ctrl-C or SIGTERM; a
 * second signal ends it at once (the next start recovers). `greet` says how to sign in.
 */
export async function keepRunning(
  openParts: OpenParts,
  greet: (solo: Solo, config: Config) => Promise<readonly string[]>,
): Promise<void> {
  const read = readConfig(process.env);
  if (!read.ok) giveUp(...read.problems);
  let stop = (): Promise<void> => Promise.resolve();
  let asked = false;
  const onSignal = (): void => {
    if (asked) process.exit(1);
    asked = true;
    void starting
      .then(() => stop())
      .then(
        () => process.exit(0),
        (error: Error) => giveUp(error.message),
      );
  };
  process.on('SIGINT', onSignal).on('SIGTERM', onSignal);
  if (process.env['npm_lifecycle_event'] !== undefined) whenParentEnds(onSignal);
  const starting = runSolo(read.config, openParts, say);
  const result = await starting;
  if (!result.ok) giveUp(result.problem);
  stop = () => result.solo.stop();
  if (asked) return;
  for (const sentence of await greet(result.solo, read.config)) say(sentence);
  const lost = await result.solo.lost;
  if (asked) return;
  await stop();
  giveUp(lost);
}

/**
 * Between npm and us stands a shell that passes no signal on: asked to end, it just ends. So under npm the end of our
 * parent counts as being asked.
 */
function whenParentEnds(stop: () => void): void {
  const parent = process.ppid;
  const watch = setInterval(() => {
    if (process.ppid === parent) return;
    clearInterval(watch);
    stop();
  }, 500);
  watch.unref();
}
