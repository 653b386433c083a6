import { Client } from 'pg';
import type { HintChannel, Hints } from '../../usecases';
import { BELL_CHANNEL } from '../outbox/outbox-store';
import { LIVE_CHANNEL } from './live-store';

const CHANNELS: Record<HintChannel, string> = { live: LIVE_CHANNEL, bell: BELL_CHANNEL };
const AGAIN_AFTER_MS = 2_000;

/**
 * One connection that listens for everyone. States: idle (nobody follows) -> listening, on the first follower;
 * listening -> waiting, when the line is cut; waiting -> listening, two seconds later; any -> closed, for good.
 */
export class Listener implements Hints {
  private readonly followers = new Map<string, Set<(text: string) => void>>();
  private client: Client | null = null;
  private timer: NodeJS.Timeout | null = null;
  private closed = false;

  constructor(
    private readonly url: string,
    private readonly name: string,
  ) {}

  follow(channel: HintChannel, tell: (text: string) => void): () => void {
    const name = CHANNELS[channel];
    const all = this.followers.get(name) ?? new Set();
    this.followers.set(name, all.add(tell));
    if (!this.client && !this.timer) this.connect();
    return () => all.delete(tell);
  }

  async close(): Promise<void> {
    this.closed = true;
    if (this.timer) clearTimeout(this.timer);
    const client = this.client;
    this.client = null;
    await client?.end().catch(() => undefined);
  }

  private connect(): void {
    if (this.closed) return;
    this.timer = null;
    const client = new Client({ connectionString: this.url, application_name: this.name, keepAlive: true });
    this.client = client;
    client.on('error', () => this.lost(client));
    client.on('end', () => this.lost(client));
    client.on('notification', ({ channel, payload }) => {
      for (const tell of this.followers.get(channel) ?? []) tell(payload ?? '');
    });
    const listen = Object.values(CHANNELS).map((name) => `LISTEN ${name}`);
    client
      .connect()
      .then(() => client.query(listen.join('; ')))
      .catch(() => this.lost(client));
  }

  private lost(client: Client): void {
    if (this.client !== client) return;
    this.client = null;
    client.end().catch(() => undefined);
    if (!this.closed) this.timer = setTimeout(() => this.connect(), AGAIN_AFTER_MS);
  }
}
