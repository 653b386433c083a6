// Records the examples of the API's description anew, by walking every operation in the contract spec.
import { spawnSync } from 'node:child_process';
import { createRequire } from 'node:module';

const jest = createRequire(import.meta.url).resolve('jest/bin/jest');
const env = { ...process.env, WRITE_EXAMPLES: '1' };
const { status } = spawnSync(process.execPath, [jest, 'test/contract'], { stdio: 'inherit', env });
process.exitCode = status ?? 1;
