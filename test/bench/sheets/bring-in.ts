import { fork } from 'node:child_process';
import { once } from 'node:events';
import { dayOf } from '../../../libs/day';
import { openSheet } from '../../../libs/sheet-files';
import type { SheetKind } from '../../../libs/sheets';
import { asProgram, openStore } from '../../../libs/store';
import { bringSheet, importSheet, lookAtSheet, type Actor, type Outcome, type Ports } from '../../../libs/usecases';

/** A file to be brought in, into which database. */
export interface Bringing {
  readonly url: string;
  readonly kind: SheetKind;
  /** Named as it is: `.csv` or `.xlsx`. */
  readonly path: string;
  /** Publishes the papers of rules. */
  readonly publish: boolean;
}

/** How it went, in a process of its own. */
export interface BroughtIn {
  readonly added: number;
  /** Seconds until the file was taken in, was looked at, and was imported, each by itself. */
  readonly seconds: { readonly taken: number; readonly looked: number; readonly imported: number };
  /** How often it was told how far the work is. */
  readonly told: number;
  /** The most memory the process held, as the system counts it. */
  readonly peakMb: number;
}

/** Brings a file in by the use cases, as the API does, in a process of its own, so that its memory is its own. */
export async function bringIn(what: Bringing): Promise<BroughtIn> {
  const child = fork(__filename, [], { execArgv: ['--enable-source-maps'] });
  child.send(what);
  const [answer] = (await Promise.race([
    once(child, 'message'),
    once(child, 'exit').then(() => [{ error: 'the process that brought the file in has ended' }]),
  ])) as [BroughtIn | { readonly error: string }];
  child.disconnect();
  if ('error' in answer) throw new Error(`${what.kind}: ${answer.error}`);
  return answer;
}

const actor: Actor = { id: 1, name: 'The manager', role: 'manager', locationId: 1 };

async function work({ url, kind, path, publish }: Bringing): Promise<BroughtIn> {
  const store = openStore({ url, sight: 'all' });
  let told = 0;
  const tell = store.live.tell.bind(store.live);
  store.live.tell = (...event) => {
    told++;
    return tell(...event);
  };
  const ports: Ports = { store, clock: { now: () => Date.now(), today: () => dayOf(2026, 11, 20) } };
  try {
    return await asProgram(async () => {
      const begun = performance.now();
      const source = await openSheet(path, path);
      const brought = await value(bringSheet(ports, actor, { kind, fileName: path, source }));
      const taken = performance.now();
      const choice = { mapping: brought.mapping, dayOrder: null, publish };
      const looked = await value(lookAtSheet(ports, actor, { ...choice, id: brought.id, version: brought.version }));
      const seen = performance.now();
      const { outcome, rejected, rows } = looked;
      if (outcome?.add !== rows) throw new Error(`not all is new: ${JSON.stringify([outcome, rejected[0]])}`);
      await value(importSheet(ports, actor, { id: looked.id, version: looked.version, leaveOutRejected: false }));
      const seconds = {
        taken: (taken - begun) / 1_000,
        looked: (seen - taken) / 1_000,
        imported: (performance.now() - seen) / 1_000,
      };
      return { added: rows, seconds, told, peakMb: Math.round(process.resourceUsage().maxRSS / 1_024) };
    });
  } finally {
    await store.close();
  }
}

async function value<T>(asked: Promise<Outcome<T>>): Promise<T> {
  const outcome = await asked;
  if (outcome.ok) return outcome.value;
  throw new Error(outcome.refusal.detail);
}

if (require.main === module)
  process.once('message', (what: Bringing) => {
    work(what).then(
      (answer) => process.send!(answer),
      (error: unknown) => process.send!({ error: String(error) }),
    );
  });
