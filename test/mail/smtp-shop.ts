import type { AddressInfo } from 'node:net';
import { simpleParser, type ParsedMail } from 'mailparser';
import { SMTPServer, type SMTPServerOptions } from 'smtp-server';

/** A mail server of its own, which keeps what it is given. */
export class SmtpShop {
  readonly mails: ParsedMail[] = [];
  readonly recipients: string[][] = [];
  /** What is answered at RCPT TO, or after the text; null takes everything. */
  refuse: { readonly at: 'recipient' | 'text'; readonly code: number } | null = null;
  /** Cuts the line once the text is here, without an answer. */
  hangUp = false;
  private readonly server: SMTPServer;

  private constructor() {
    const options: SMTPServerOptions = {
      disabledCommands: ['STARTTLS', 'AUTH'],
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

  static async open(): Promise<SmtpShop> {
    const shop = new SmtpShop();
    await new Promise<void>((resolve) => shop.server.listen(0, '127.0.0.1', resolve));
    return shop;
  }

  get url(): string {
    return `smtp://127.0.0.1:${(this.server.server.address() as AddressInfo).port}`;
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
