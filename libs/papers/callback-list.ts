import type { CallbackView } from '../contracts';
import { csv } from './csv';

const HEADS = [
  'Owner',
  'Phone',
  'E-mail',
  'Address',
  'Agreed to be called',
  'Unit',
  'Serial',
  'Stop use',
  'Since',
  'Next try',
  'Tries',
  'What to say',
];

/** The list as a table for another program. Of an owner who has not agreed, or declines a way, no way in is told. */
export function callbackList(callbacks: readonly CallbackView[]): string {
  return csv([HEADS, ...callbacks.map(row)]);
}

function row({ owner, unit, urgent, openedAt, nextOn, attempts, say }: CallbackView): string[] {
  const way = (name: 'phone' | 'email' | 'letter', value: string) =>
    owner.consent && !owner.declined.includes(name) ? value : '';
  return [
    owner.name,
    way('phone', owner.phone),
    way('email', owner.email),
    way('letter', owner.address),
    owner.consent ? 'yes' : 'no',
    unit.name,
    unit.serial ?? '',
    urgent ? 'yes' : 'no',
    openedAt.slice(0, 10),
    nextOn ?? '',
    String(attempts.length),
    say,
  ];
}
