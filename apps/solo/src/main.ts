import { type Config } from '../../../libs/config';
import { keepRunning } from './keep-running';
import { type OpenParts, type Solo } from './run-solo';

/**
 * The parts are loaded only once they are to be opened: a start that is refused answers without them. Node itself
 * fetches what is imported late, and it wants the whole name of the file.
 */
const openParts: OpenParts = async (config, say) => (await import('./shop-parts.js')).shopParts(config, say);

/** Where the page is, and how to sign in to the demo shop. */
async function greet({ address }: Solo, { demo }: Config): Promise<readonly string[]> {
  const { demoPeople } = await import('../../../libs/demo/index.js');
  const people = demoPeople.map(({ login, role }) => `${login} (${role})`).join(', ');
  return [
    `Revright is ready at ${address}`,
    ...(demo ? [`Sign in to the demo shop as ${people}; password '${demoPeople[0]!.password}'.`] : []),
    'Ctrl-C stops it; the data stays.',
  ];
}

void keepRunning(openParts, greet);
