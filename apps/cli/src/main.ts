#!/usr/bin/env node
import { run } from './run';

// A reader that has seen enough (such as `head`) closes the pipe; that is no failure of ours.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(0);
  throw error;
});

void run(process.argv.slice(2), process).then((code) => (process.exitCode = code));
