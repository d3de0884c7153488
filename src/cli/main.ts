import { availableParallelism } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { run } from './run';
import type { Output } from './terminal';

const outputOf = (stream: NodeJS.WriteStream): Output => ({
  write: (text) => void stream.write(text),
  isTTY: stream.isTTY === true,
  columns: stream.isTTY ? stream.columns : null,
});

// Whoever reads may stop before the end, as `head` does: that is no failure.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
});

// The exit status is set and not forced, so that all of a long output gets through a pipe.
process.exitCode = await run(process.argv.slice(2), {
  out: outputOf(process.stdout),
  err: outputOf(process.stderr),
  environment: process.env,
  workerFile: join(dirname(fileURLToPath(import.meta.url)), 'worker.mjs'),
  cores: availableParallelism(),
});
