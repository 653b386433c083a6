// Writes the types of the page's client, apps/web/src/lib/api-types.ts, from the API's own description.
//   --print   takes the description from the standard input instead and prints the types
import { writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { text } from 'node:stream/consumers';
import openapiTS, { astToString } from 'openapi-typescript';

const root = join(import.meta.dirname, '..', '..');
const HEAD = "// Generated from the API's description by `npm run api-types`; not written by hand.\n\n";

const typesOf = async (document) => HEAD + astToString(await openapiTS(document));

function describedByTheBuild() {
  const require = createRequire(import.meta.url);
  const api = join(root, 'dist', 'apps', 'api', 'src');
  const { describeApi } = require(join(api, 'open-api', 'document.js'));
  const { allControllers } = require(join(api, 'app.module.js'));
  return describeApi(allControllers(), {});
}

if (process.argv.includes('--print')) {
  process.stdout.write(await typesOf(JSON.parse(await text(process.stdin))));
} else {
  writeFileSync(join(root, 'apps', 'web', 'src', 'lib', 'api-types.ts'), await typesOf(describedByTheBuild()));
}
