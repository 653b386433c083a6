import { asNobody } from './audit/acting';

interface Waiting<K, V> {
  readonly key: K;
  readonly resolve: (value: V | undefined) => void;
  readonly reject: (error: unknown) => void;
}

/**
 * Asks about many keys in one question: whoever asks while a question is under way waits for the next one, which asks
 * for all of them. Nothing is kept: a question always begins after everybody whom it answers has asked. It is asked in
 * nobody's name, so it may only be about what stands behind no wall; and a connection need not be told whose eyes it has.
 */
export class Together<K, V> {
  private waiting: Waiting<K, V>[] = [];
  private asking = false;

  constructor(private readonly ask: (keys: readonly K[]) => Promise<ReadonlyMap<K, V>>) {}

  /** What is known of the key; undefined where nothing is. */
  of(key: K): Promise<V | undefined> {
    return new Promise((resolve, reject) => {
      this.waiting.push({ key, resolve, reject });
      if (!this.asking) void this.askOn();
    });
  }

  private async askOn(): Promise<void> {
    this.asking = true;
    while (this.waiting.length > 0) {
      const asked = this.waiting;
      this.waiting = [];
      try {
        const found = await asNobody(() => this.ask([...new Set(asked.map(({ key }) => key))]));
        for (const { key, resolve } of asked) resolve(found.get(key));
      } catch (error) {
        for (const { reject } of asked) reject(error);
      }
    }
    this.asking = false;
  }
}
