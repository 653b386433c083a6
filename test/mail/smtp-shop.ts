import type { AddressInfo } from 'node:net';
import { simpleParser, type ParsedMail } from 'mailparser';
import { SMTPServer, type SMTPServerOptions } from 'smtp-server';

/** The one name and password that a server asking for them takes. */
export const LOGIN = { user: 'mill', pass: 'grind-slow-7' };

/** A mail server of its own, which keeps what it is given. */
export class SmtpShop {
  readonly mails: ParsedMail[] = [];
  readonly recipients: string[][] = [];
  /** What is answered at RCPT TO, or after the text; null takes everything. */
  refuse: { readonly at: 'recipient' | 'text'; readonly code: number } | null = null;
  /** Cuts the line once the text is here, without an answer. */
  hangUp = false;
  private readonly server: SMTPServer;

  private constructor(asksForLogin: boolean) {
    const options: SMTPServerOptions = {
      disabledCommands: asksForLogin ? ['STARTTLS'] : ['STARTTLS', 'AUTH'],
      authOptional: !asksForLogin,
      allowInsecureAuth: true,
      onAuth: ({ username, password }, _session, done) =>
        username === LOGIN.user && password === LOGIN.pass ? done(null, { user: username }) : done(new Error('wrong')),
      onRcptTo: (_address, _session, done) => done(this.refusal('recipient')),
      onData: (stream, session, done) => {
        void simpleParser(stream).then((mail) => {
          if (this.hangUp)
            return this.server.connections.forEach((one) => (one as unknown as Closing)._socket.destroy());
          const refusal = this.refusal('text');
          if (refusal) return done(refusal);
          this.mails.push(mail);
          this.recipients.push(session.envelope.rcptTo.map(({ address }) => address));
          done();
        });
      },
    };
    this.server = new SMTPServer(options);
    this.server.on('error', () => undefined);
  }

  static async open({ asksForLogin = false } = {}): Promise<SmtpShop> {
    const shop = new SmtpShop(asksForLogin);
    await new Promise<void>((resolve) => shop.server.listen(0, '127.0.0.1', resolve));
    return shop;
  }

  get port(): number {
    return (this.server.server.address() as AddressInfo).port;
  }

  get url(): string {
    return `smtp://127.0.0.1:${this.port}`;
  }

  close(): Promise<void> {
    return new Promise((resolve) => this.server.close(() => resolve()));
  }

  private refusal(at: 'recipient' | 'text'): Error | null {
    if (this.refuse?.at !== at) return null;
    return Object.assign(new Error('not today'), { responseCode: this.refuse.code });
  }
}

interface Closing {
  readonly _socket: { destroy(): void };
}
