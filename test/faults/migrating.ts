import { applyMigrations } from '../../libs/store/migrate';

/** Migrates DATABASE_URL by the migrations of PRISMA_FOLDER, as the programs do with their own, and says when it is done. */
async function main(): Promise<void> {
  const [url, folder] = [process.env['DATABASE_URL'] ?? '', process.env['PRISMA_FOLDER'] ?? ''];
  const applied = await applyMigrations(url, folder);
  process.stdout.write(`${applied.length} applied\n`);
}

main().catch((error: unknown) => {
  process.stderr.write(`${String(error)}\n`);
  process.exitCode = 1;
});
