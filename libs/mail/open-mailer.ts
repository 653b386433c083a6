import { createTransport } from 'nodemailer';
import { oneLine } from '../papers';
import type { MailAnswer, MailServer, OpenMailer } from '../usecases';

/** How long a server may take for one step. */
const PATIENCE_MS = 30_000;

/**
 * Hands mails to one SMTP server, one at a time. The recipient is given as data, never as a list to be read; files and
 * addresses on the network are never fetched for a mail.
 */
export const openMailer: OpenMailer = (server) => {
  const { from } = server;
  const transport = createTransport({
    ...addressOf(server),
    disableFileAccess: true,
    disableUrlAccess: true,
    connectionTimeout: PATIENCE_MS,
    greetingTimeout: PATIENCE_MS,
    socketTimeout: PATIENCE_MS,
  });
  const domain = /@([A-Za-z0-9.-]+)/.exec(from)?.[1] ?? 'localhost';
  return {
    async send({ recipient, subject, text, html, id }) {
      try {
        // Whether the server can be reached and lets us in is seen first: up to here a mail was certainly not taken.
        await transport.verify();
      } catch (error) {
        return { kind: 'later', why: whyOf(error as Error) };
      }
      try {
        const to = { name: '', address: recipient };
        await transport.sendMail({ from, to, subject, text, html, messageId: `<${id}@${domain}>` });
        return { kind: 'sent' };
      } catch (error) {
        return answerOf(error as SmtpError);
      }
    },
    close: () => transport.close(),
  };
};

/** As the transport wants it. A line that is to be private is never opened otherwise, whatever the server offers. */
function addressOf(server: MailServer) {
  if ('url' in server) return { url: server.url };
  const { host, port, security, login, password } = server;
  return {
    host,
    port,
    secure: security === 'tls',
    requireTLS: security === 'starttls',
    ignoreTLS: security === 'none',
    ...(login === '' ? {} : { auth: { user: login, pass: password } }),
  };
}

interface SmtpError extends Error {
  readonly code?: string;
  /** the server's answer, such as 451 or 550 (RFC 5321, 4.2) */
  readonly responseCode?: number;
  /** the step it came at */
  readonly command?: string;
}

/**
 * What a failure means: a 4xx answer may be tried again and a 5xx never (RFC 5321, 4.2.1). Without an answer the line
 * broke, and nobody knows whether the mail was taken, unless it broke before its text had been handed over.
 */
function answerOf(error: SmtpError): MailAnswer {
  const { code, responseCode = 0, command = '' } = error;
  const why = whyOf(error);
  if (responseCode >= 400) return { kind: responseCode < 500 ? 'later' : 'refused', why };
  if (code === 'EENVELOPE' || code === 'EMESSAGE') return { kind: 'refused', why };
  if (BEFORE_TEXT.has(command)) return { kind: 'later', why };
  return { kind: 'unclear', why };
}

const BEFORE_TEXT = new Set(['STARTTLS', 'MAIL FROM', 'RCPT TO']);

/** One line, without what a server could put into it to be read as more. */
const whyOf = ({ message }: Error): string => `The mail server: ${oneLine(message)}`.slice(0, 500);
