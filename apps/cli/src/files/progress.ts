import type { Surroundings } from '../surroundings';

const WIDTH = 30;
const EVERY_MS = 150;

/**
 * A bar on stderr while long work runs. It is drawn only where stderr is a terminal, at most some times a second, and
 * wiped when the work ends, so that it never mixes with an answer.
 */
export class Progress {
  private done = 0;
  private drawnAt = 0;
  private readonly shown: boolean;

  constructor(
    private readonly stderr: Surroundings['stderr'],
    private readonly total: number | null,
    private readonly now: () => number = Date.now,
  ) {
    this.shown = stderr.isTTY === true;
  }

  /** So many bytes more were read; `rows` are done by now. */
  add(bytes: number, rows: number): void {
    this.done += bytes;
    if (!this.shown || this.now() - this.drawnAt < EVERY_MS) return;
    this.drawnAt = this.now();
    this.stderr.write(`\r${this.bar()} ${rows.toLocaleString('en')} rows\u001b[K`);
  }

  /** Wipes the bar. */
  end(): void {
    if (this.drawnAt > 0) this.stderr.write('\r\u001b[K');
    this.drawnAt = 0;
  }

  private bar(): string {
    if (this.total === null) return `${Math.round(this.done / 1e6)} MB`;
    const share = this.total === 0 ? 1 : Math.min(1, this.done / this.total);
    const full = Math.round(share * WIDTH);
    return `[${'#'.repeat(full)}${'.'.repeat(WIDTH - full)}] ${String(Math.round(share * 100)).padStart(3)} %`;
  }
}
