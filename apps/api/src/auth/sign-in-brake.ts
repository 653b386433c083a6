/**
 * Slows guessing down. An account has five free tries, then each wrong one doubles the wait, from one second to a
 * quarter of an hour; an address has thirty tries a minute. A right password ends the account's count.
 *
 * Kept in memory: a restart forgives, which an attacker cannot bring about.
 */
export class SignInBrake {
  private readonly accounts = new Map<string, { wrong: number; until: number }>();
  private readonly addresses = new Map<string, { tries: number; since: number }>();

  constructor(private readonly now: () => number) {}

  /** Milliseconds to wait before this try may be made; 0 when it may be made now, and then it is counted. */
  waitFor(account: string, address: string): number {
    this.forgetOld();
    const now = this.now();
    const known = this.addresses.get(address) ?? { tries: 0, since: now };
    if (known.tries >= TRIES_A_MINUTE) return known.since + MINUTE - now;
    const wait = (this.accounts.get(account)?.until ?? 0) - now;
    if (wait > 0) return wait;
    this.addresses.set(address, { ...known, tries: known.tries + 1 });
    return 0;
  }

  wrong(account: string): void {
    const wrong = (this.accounts.get(account)?.wrong ?? 0) + 1;
    const wait = wrong < FREE_TRIES ? 0 : Math.min(1_000 * 2 ** (wrong - FREE_TRIES), LONGEST_WAIT);
    this.accounts.set(account, { wrong, until: this.now() + wait });
  }

  right(account: string): void {
    this.accounts.delete(account);
  }

  private forgetOld(): void {
    const now = this.now();
    for (const [address, { since }] of this.addresses) if (now - since >= MINUTE) this.addresses.delete(address);
    if (this.accounts.size < MOST_ACCOUNTS) return;
    for (const [account, { until }] of this.accounts) if (until + LONGEST_WAIT < now) this.accounts.delete(account);
  }
}

const MINUTE = 60_000;
const FREE_TRIES = 5;
const TRIES_A_MINUTE = 30;
const LONGEST_WAIT = 15 * MINUTE;
const MOST_ACCOUNTS = 10_000;
