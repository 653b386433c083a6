import type { LineSecurity } from '../../contracts';

/** The mail server as the shop has settled it. */
export interface KeptMailServer {
  readonly host: string;
  readonly port: number;
  readonly security: LineSecurity;
  readonly login: string;
  /** The password, sealed; null where there is none. */
  readonly sealed: string | null;
  readonly senderName: string;
  readonly senderAddress: string;
}

export interface MailServerStore {
  /** Null where none is settled; the version rises with every change, also with taking it away. */
  read(): Promise<{ readonly server: KeptMailServer | null; readonly version: number }>;
  /** False when the version is no longer the one that was read. */
  write(server: KeptMailServer | null, version: number): Promise<boolean>;
  /** Keeps the password under another seal; false when it is no longer the one that was read. */
  reseal(was: string, sealed: string): Promise<boolean>;
}
