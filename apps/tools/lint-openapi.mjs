// Lints an OpenAPI document, JSON on the standard input, by the recommended rules; prints what is wrong as JSON.
import { text } from 'node:stream/consumers';
import { createConfig, lintFromString } from '@redocly/openapi-core';

const config = await createConfig({ extends: ['recommended'] });
const problems = await lintFromString({ source: await text(process.stdin), config, absoluteRef: 'openapi.json' });
const told = problems.map(({ ruleId, severity, message, location }) => ({
  ruleId,
  severity,
  message,
  at: location[0]?.pointer,
}));
process.stdout.write(JSON.stringify(told));
