/** Changes that demand no version, by operation, each with why nobody's change is lost by it. */
export const WITHOUT_VERSION: Readonly<Record<string, string>> = {
  ...all('begins or ends the sign-in of whoever asks; nobody else changes it', [
    'session-sign-in',
    'session-sign-out',
    'session-sign-out-everywhere',
    'session-use-link',
    'elsewhere-begin',
    'elsewhere-back',
    'second-factor-sign-in',
  ]),
  ...all('is one’s own and asks for one’s own password or code in the same request', [
    'session-change-password',
    'second-factor-begin',
    'second-factor-turn-on',
    'second-factor-turn-off',
    'second-factor-recovery',
  ]),
  ...all('makes something new that nobody can have seen', [
    'tickets-open',
    'photos-take',
    'bulletins-save',
    'serial-schemes-add',
    'standard-editions-add',
    'people-add',
    'rechecks-order',
    'sheets-bring',
    'shelf-orders-place',
    'api-tokens-make',
    'webhooks-add',
  ]),
  ...all('adds to what is there, whatever it is, and takes nothing away', [
    'shelf-receive',
    'letters-write',
    'letters-mail',
    'webhooks-again',
    'webhooks-try-out',
    'mail-server-try-out',
  ]),
  ...all('changes nothing', ['board-look-up', 'tickets-tell', 'bulletins-what-if', 'serial-schemes-try']),
  'benches-move':
    'says in its body on which bench the ticket was seen, and is refused with 412 when it is there no more',
  ...all('names in its path the one number that comes or goes; a number of another part is refused with 409', [
    'catalogue-add-trade-number',
    'catalogue-remove-trade-number',
  ]),
  ...all('ends it for good, whatever it has become', ['api-tokens-revoke', 'webhooks-remove']),
  'session-keep-draft': 'is what whoever asks has begun to type; nobody else sees or changes it',
  'session-read': 'is how whoever asks reads the page; nobody else changes it',
  'benches-choose': 'is the own bench of whoever asks; nobody else changes it',
  'shelf-pulled': 'is a mark that is set once; who comes second is told so with 409 and the marks as they stand',
  'sheets-drop': 'throws away what only whoever brought it can see, whatever it has become',
  'rulebook-file-import': 'adds what the file holds to the rulebook as it stands and refuses what contradicts it',
};

function all(why: string, operations: readonly string[]): Record<string, string> {
  return Object.fromEntries(operations.map((operation) => [operation, why]));
}
