#!/usr/bin/env node
import { BAD_INPUT } from './refusal';
import { run } from './run';

// A reader that has seen enough (such as `head`) closes the pipe; that is no failure of ours.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(0);
  throw error;
});

// Leaving through `exit` lets a half-written file be taken away.
process.once('SIGINT', () => process.exit(130));
process.once('SIGTERM', () => process.exit(143));

run(process.argv.slice(2), process).then(
  (code) => (process.exitCode = code),
  (error: unknown) => {
    // A fault of the program must never look like the answer 'no', which is 1.
    console.error('revright has failed; this is a fault of the program:', error);
    process.exitCode = BAD_INPUT;
  },
);
