import type { LineSecurity } from '../../contracts';

/** An e-mail that waits. */
export interface WaitingMail {
  readonly id: number;
  readonly callbackId: number;
  readonly recipient: string;
  readonly subject: string;
  readonly text: string;
  readonly html: string;
  /** How often it was handed over, this time included. */
  readonly tries: number;
  readonly queuedBy: number | null;
}

export type MailEnd = 'sent' | 'failed' | 'unclear' | 'cancelled';

export interface MailStore {
  /** Keeps mails to be sent; answers the callbacks for which this wording was not there yet. */
  queue(
    mails: readonly {
      readonly callbackId: number;
      readonly wording: string;
      readonly recipient: string;
      readonly subject: string;
      readonly text: string;
      readonly html: string;
    }[],
    personId: number,
  ): Promise<readonly number[]>;
  /** Takes the next mail whose time has come and marks it as being sent; null when there is none. */
  claim(leaseSeconds: number): Promise<WaitingMail | null>;
  end(id: number, state: MailEnd, problem: string | null): Promise<void>;
  /** Puts it back, to be tried again. */
  later(id: number, seconds: number, problem: string): Promise<void>;
  /** Mails whose sender died in mid-work: whether they went out nobody knows, so they are not sent again. */
  markUnclear(problem: string): Promise<number>;
}

/** What the mail server made of a mail. */
export type MailAnswer =
  | { readonly kind: 'sent' }
  /** It was certainly not taken, and may be tried again. */
  | { readonly kind: 'later'; readonly why: string }
  /** It was certainly not taken, and never will be. */
  | { readonly kind: 'refused'; readonly why: string }
  /** The line broke when it had been handed over. */
  | { readonly kind: 'unclear'; readonly why: string };

export interface Mailer {
  send(mail: {
    readonly recipient: string;
    readonly subject: string;
    readonly text: string;
    readonly html: string;
    /** The same for every try, so that a recipient's server can tell a second one. */
    readonly id: string;
  }): Promise<MailAnswer>;
}

/** Where mails are handed over and from whom they are: an address with all in it, or its parts. */
export type MailServer = {
  /** One address, or `Name <address>`. */
  readonly from: string;
} & (
  | {
      /** smtp:// or smtps:// with host, port and, where the server asks for it, name and password. */
      readonly url: string;
    }
  | {
      readonly host: string;
      readonly port: number;
      readonly security: LineSecurity;
      /** Both empty where it asks for none. */
      readonly login: string;
      readonly password: string;
    }
);

/** Opens the way to a server; whoever opened it closes it. */
export type OpenMailer = (server: MailServer) => Mailer & { close(): void };
