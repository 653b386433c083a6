import type { Readable, Writable } from 'node:stream';

/** What a command reads from and writes to besides files, so that a spec can stand in for a terminal. */
export interface Surroundings {
  readonly stdin: Readable;
  readonly stdout: Writable & { readonly isTTY?: boolean };
  readonly stderr: Writable & { readonly isTTY?: boolean };
}
