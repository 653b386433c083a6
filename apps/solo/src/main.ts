import { type Config } from '../../../libs/config';
import { demoPeople } from '../../../libs/demo';
import { keepRunning } from './keep-running';
import { type Solo } from './run-solo';
import { shopParts } from './shop-parts';

/** Where the page is, and how to sign in to the demo shop. */
function greet({ address }: Solo, { demo }: Config): readonly string[] {
  const people = demoPeople.map(({ login, role }) => `${login} (${role})`).join(', ');
  return [
    `Revright is ready at ${address}`,
    ...(demo ? [`Sign in to the demo shop as ${people}; password '${demoPeople[0]!.password}'.`] : []),
    'Ctrl-C stops it; the data stays.',
  ];
}

void keepRunning(shopParts, greet);
