import type { ChangeMailServer, LineSecurity, MailServerView } from '../../../../../libs/contracts';

/** The mail server as it stands in the form. */
export interface TypedMailServer {
  host: string;
  port: string;
  security: LineSecurity;
  login: string;
  /** empty: the one that is kept stays */
  password: string;
  senderName: string;
  senderAddress: string;
}

export const SECURITY_WORDS: Record<LineSecurity, string> = {
  tls: 'TLS from the start, usually port 465',
  starttls: 'STARTTLS, usually port 587',
  none: 'none, usually port 25',
};

export const USUAL_PORTS: Record<LineSecurity, string> = { tls: '465', starttls: '587', none: '25' };

const NOTHING: TypedMailServer = {
  host: '',
  port: USUAL_PORTS.starttls,
  security: 'starttls',
  login: '',
  password: '',
  senderName: '',
  senderAddress: '',
};

export function typedFrom({ server }: MailServerView): TypedMailServer {
  return server ? { ...server, port: String(server.port), password: '' } : NOTHING;
}

/** Another way of keeping the line private brings its usual port, where the usual one of the way before stood. */
export function withSecurity(typed: TypedMailServer, security: LineSecurity): TypedMailServer {
  const usual = typed.port === USUAL_PORTS[typed.security];
  return { ...typed, security, port: usual ? USUAL_PORTS[security] : typed.port };
}

/** What is to be settled; null as long as host, port or sender are missing. The server says what else is wrong. */
export function serverFrom({ port, password, ...typed }: TypedMailServer): ChangeMailServer['server'] {
  const number = /^\s*\d{1,5}\s*$/.test(port) ? Number(port) : 0;
  if (typed.host.trim() === '' || typed.senderAddress.trim() === '' || number === 0) return null;
  return { ...typed, port: number, ...(password === '' ? {} : { password }) };
}
