import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { NO_FILTER } from './apply-migrations';
import { migrationList, prismaFolder } from './migration-list';
import { withSchemaEngine } from './schema-engine';

/**
 * The SQL that leads from the migrations to schema.prisma; undefined when they agree. The migrations are replayed in
 * a database of its own on the given server, which is dropped afterwards.
 */
export async function schemaDiff(serverUrl: string, folder: string = prismaFolder()): Promise<string | undefined> {
  const path = join(folder, 'schema.prisma');
  const files = [{ path, content: readFileSync(path, 'utf8') }];
  const { exitCode, stdout } = await withSchemaEngine(serverUrl, (engine) =>
    engine.diff({
      from: { tag: 'migrations', ...migrationList(folder) },
      to: { tag: 'schemaDatamodel', files },
      script: true,
      exitCode: true,
      filters: NO_FILTER,
    }),
  );
  return exitCode === 0 ? undefined : (stdout ?? '');
}
