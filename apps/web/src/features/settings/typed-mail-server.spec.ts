import { serverFrom, typedFrom, withSecurity } from './typed-mail-server';

const server = {
  host: 'mail.example.org',
  port: 587,
  security: 'starttls' as const,
  login: 'shop',
  senderName: 'Mill',
  senderAddress: 'shop@example.org',
};
const typed = typedFrom({ server: { ...server, password: 'kept' }, environment: null, version: 2 });

describe('the mail server as it is typed', () => {
  it('never holds the password that is kept, and sends none where none was typed', () => {
    expect(typed.password).toBe('');
    expect(serverFrom(typed)).toEqual(server);
    expect(serverFrom({ ...typed, password: ' a b ' })).toEqual({ ...server, password: ' a b ' });
  });

  it.each([{ host: ' ' }, { port: '' }, { port: 'smtp' }, { port: '0' }, { senderAddress: '' }])(
    'is nothing to settle with %o',
    (missing) => {
      expect(serverFrom({ ...typed, ...missing })).toBeNull();
    },
  );

  it('takes the usual port of another way along, and leaves a port of its own alone', () => {
    expect(withSecurity(typed, 'tls').port).toBe('465');
    expect(withSecurity({ ...typed, port: '2525' }, 'tls').port).toBe('2525');
  });
});
