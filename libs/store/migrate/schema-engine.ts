import { readFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { bindMigrationAwareSqlAdapterFactory, type SqlDriverAdapter } from '@prisma/driver-adapter-utils';
import type * as engineTypes from '@prisma/schema-engine-wasm/schema_engine_bg';
import { openAdapter, openShadowAdapter } from './schema-engine-adapter';

/** The part of Node's WebAssembly that is used here; the type library for servers leaves it out. */
declare const WebAssembly: {
  compile(code: Uint8Array): Promise<object>;
  instantiate(code: object, imports: Record<string, object>): Promise<{ readonly exports: EngineExports }>;
};

interface EngineExports {
  __wbindgen_start(): void;
}
type EngineModule = typeof engineTypes & { __wbg_set_wasm(exports: unknown): void };

let loaded: Promise<EngineModule> | undefined;

async function load(): Promise<EngineModule> {
  const engine = (await import('@prisma/schema-engine-wasm/schema_engine_bg')) as EngineModule;
  const folder = dirname(require.resolve('@prisma/schema-engine-wasm/schema_engine_bg'));
  const code = await WebAssembly.compile(await readFile(join(folder, 'schema_engine_bg.wasm')));
  const { exports } = await WebAssembly.instantiate(code, {
    './schema_engine_bg.js': { ...engine, ...timersThatDoNotHold(engine) },
  });
  engine.__wbg_set_wasm(exports);
  exports.__wbindgen_start();
  return engine;
}

/** The engine leaves a timer of ten seconds behind (the longest it waits for its lock), which would keep a program open. */
function timersThatDoNotHold(engine: object): Record<string, unknown> {
  const name = Object.keys(engine).find((key) => key.startsWith('__wbg_setTimeout_'))!;
  return { [name]: (task: () => void, milliseconds: number) => setTimeout(task, milliseconds >>> 0).unref() };
}

/** A panic of the engine reports its text through this global; without it only 'unreachable' would be seen. */
function keepPanicText(): { text: string } {
  const panic = { text: '' };
  Object.assign(globalThis, {
    PRISMA_WASM_PANIC_REGISTRY: { set_message: (message: string) => void (panic.text = message) },
  });
  return panic;
}

/**
 * Lends Prisma's own migration engine, as WebAssembly (the same rules as its command line, no binary to download), on that database for the length of the task.
 * Throws with the engine's own words.
 */
export async function withSchemaEngine<T>(
  databaseUrl: string,
  task: (engine: engineTypes.SchemaEngine) => Promise<T>,
): Promise<T> {
  const panic = keepPanicText();
  const { SchemaEngine: Engine } = await (loaded ??= load());
  const opened: SqlDriverAdapter[] = [];
  const factory = bindMigrationAwareSqlAdapterFactory({
    provider: 'postgres',
    adapterName: '@prisma/adapter-pg',
    connect: async () => {
      const adapter = await openAdapter(databaseUrl);
      opened.push(adapter);
      return adapter;
    },
    connectToShadowDb: () => openShadowAdapter(databaseUrl),
  });
  const engine = await Engine.new({ datamodels: undefined }, () => undefined, factory);
  try {
    return await task(engine);
  } catch (error) {
    throw new Error(`Migration engine: ${panic.text || messageOf(error)}`, { cause: error });
  } finally {
    engine.free();
    // The engine closes the database it replays on, but not the one it was given.
    await Promise.all(opened.map((adapter) => adapter.dispose()));
  }
}

const messageOf = (error: unknown): string => (error instanceof Error ? error.message : JSON.stringify(error));
