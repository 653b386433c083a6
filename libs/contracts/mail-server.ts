import { z } from 'zod';
import { line, version } from './common';

/**
 * How the line to the mail server is kept private: from its first byte on (usually port 465), by STARTTLS before
 * anything is told (usually 587), or not at all (usually 25).
 */
export const LINE_SECURITIES = ['tls', 'starttls', 'none'] as const;
export type LineSecurity = (typeof LINE_SECURITIES)[number];

/** The machine itself: what is told it crosses no network. */
const OWN_MACHINE = /^(localhost|127\.\d{1,3}\.\d{1,3}\.\d{1,3}|::1)$/;

const mailAddress = z
  .string()
  .trim()
  .regex(/^[^\s@<>,;:"()[\]\\]{1,64}@[A-Za-z0-9.-]{1,190}$/, {
    error: 'expected one e-mail address such as shop@example.org',
  });

const server = z.object({
  host: z
    .string()
    .trim()
    .regex(/^(?:[A-Za-z0-9](?:[A-Za-z0-9.-]{0,251}[A-Za-z0-9])?|[0-9A-Fa-f:.]{2,45})$/, {
      error: 'expected the name or the address of a host, such as mail.example.org, without a port',
    }),
  port: z
    .int({ error: 'expected a port from 1 to 65535' })
    .min(1, { error: 'expected a port from 1 to 65535' })
    .max(65_535, { error: 'expected a port from 1 to 65535' }),
  security: z.enum(LINE_SECURITIES),
  /** the name it asks for; empty where it asks for none */
  login: line(200),
  senderName: line(100).refine((text) => !/[<>"\r\n]/.test(text), {
    error: 'expected a name without <, >, " and line breaks',
  }),
  senderAddress: mailAddress,
});

/** PUT /api/settings/mail-server (If-Match): the server that takes the shop's e-mails; null for none. */
export const changeMailServer = z.object({
  server: server
    .extend({
      /** left out: the one that is kept stays */
      password: z.string().min(1).max(500).optional(),
    })
    .refine(({ login, security, host }) => login === '' || security !== 'none' || OWN_MACHINE.test(host), {
      path: ['security'],
      error: 'expected tls or starttls where a name is given: a password goes over no open line',
    })
    .nullable(),
});
export type ChangeMailServer = z.infer<typeof changeMailServer>;

/** GET /api/settings/mail-server: as it is settled, without the password, which is told to nobody. */
export const mailServerView = z.object({
  server: server
    .extend({
      /** `lost`: the server's key is another one than it was sealed with, so it is to be typed anew */
      password: z.enum(['none', 'kept', 'lost']),
    })
    .nullable(),
  /** what the environment of the program says, which goes before what is settled here; null where it says nothing */
  environment: z.object({ server: z.string(), from: z.string() }).nullable(),
  version,
});
export type MailServerView = z.infer<typeof mailServerView>;

/** POST /api/settings/mail-server/trial: a letter to see whether letters arrive. */
export const mailTrial = z.object({ to: mailAddress });
export type MailTrial = z.infer<typeof mailTrial>;

/** What the mail server took. */
export const mailTrialSent = z.object({ to: z.string(), from: z.string(), server: z.string() });
export type MailTrialSent = z.infer<typeof mailTrialSent>;
