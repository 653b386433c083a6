// Builds the programs into dist/ and the web page into dist/apps/web.
//   --if-changed   does nothing when no source has changed since the last build
//   --server       leaves the web page out
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join, relative } from 'node:path';
import { gzipSync } from 'node:zlib';
import { generateClient } from './generate-client.mjs';

const root = join(import.meta.dirname, '..', '..');
const dist = join(root, 'dist');
const require = createRequire(import.meta.url);

const SERVER = [
  'apps/api',
  'apps/worker',
  'apps/solo',
  'apps/cli',
  'libs',
  'test',
  'prisma',
  'apps/tools',
  'tsconfig.json',
  'package-lock.json',
];
const WEB = ['apps/web', 'libs', 'tsconfig.json', 'package-lock.json'];
const NOT_BUILT = /\.spec\.tsx?$|libs\/store\/generated\//;

function filesBelow(path) {
  const full = join(root, path);
  if (!existsSync(full)) return [];
  if (!statSync(full).isDirectory()) return [full];
  return readdirSync(full, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name));
}

/** One fingerprint of all sources by content, so that a fresh checkout or a touched file alone builds nothing. */
function fingerprint(paths) {
  const hash = createHash('sha256');
  for (const file of paths
    .flatMap(filesBelow)
    .filter((name) => !NOT_BUILT.test(name))
    .sort()) {
    hash
      .update(`${relative(root, file)}\0`)
      .update(readFileSync(file))
      .update('\0');
  }
  return hash.digest('hex');
}

const stampFile = (part) => join(dist, `${part}.stamp`);
const isCurrent = (part, print) => existsSync(stampFile(part)) && readFileSync(stampFile(part), 'utf8') === print;

/** The package names no path of its program to others, only the program itself. */
const VITE = join(dirname(require.resolve('vite/package.json')), 'bin', 'vite.js');

/** Runs a tool of node_modules; its own text is shown, and a failure ends the build. */
function run(script, args) {
  const { status } = spawnSync(process.execPath, [script, ...args], { cwd: root, stdio: 'inherit' });
  if (status !== 0) process.exit(1);
}

/** Puts a packed copy beside each script and sheet of the page, which the server sends to whoever can unpack it. */
function pack(folder) {
  for (const name of readdirSync(folder).filter((one) => /\.(js|css)$/.test(one)))
    writeFileSync(join(folder, `${name}.gz`), gzipSync(readFileSync(join(folder, name)), { level: 9 }));
}

const PARTS = {
  server: {
    sources: SERVER,
    build: () => {
      generateClient();
      run(require.resolve('typescript/bin/tsc'), ['-p', 'apps/tools/tsconfig.build.json']);
    },
  },
  web: {
    sources: WEB,
    build: () => {
      run(VITE, ['build', 'apps/web', '--logLevel', 'warn']);
      pack(join(dist, 'apps', 'web', 'assets'));
    },
  },
};

const ifChanged = process.argv.includes('--if-changed');
const wanted = process.argv.includes('--server') ? ['server'] : ['server', 'web'];
const prints = Object.fromEntries(wanted.map((part) => [part, fingerprint(PARTS[part].sources)]));
const due = wanted.filter((part) => !ifChanged || !isCurrent(part, prints[part]));

if (due.length === 0) {
  process.stdout.write('Build: nothing has changed.\n');
} else {
  process.stdout.write(`Build: ${due.join(' and ')}.\n`);
  mkdirSync(dist, { recursive: true });
  for (const part of due) {
    rmSync(stampFile(part), { force: true });
    PARTS[part].build();
    writeFileSync(stampFile(part), prints[part]);
  }
}
