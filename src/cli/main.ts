import { readFile, writeFile } from 'node:fs/promises';
import { v7 as uuid } from 'uuid';
import { run, type World } from './run.ts';

const world: World = {
  readFile: async (path) => Uint8Array.from(await readFile(path)),
  readInput: async () => {
    const chunks: Buffer[] = [];
    for await (const chunk of process.stdin) chunks.push(Buffer.from(chunk));
    return Uint8Array.from(Buffer.concat(chunks));
  },
  writeFile: (path, text) => writeFile(path, text),
  print: (text) => void process.stdout.write(text),
  complain: (text) => void process.stderr.write(text),
  now: () => new Date().toISOString(),
  newId: () => uuid(),
};

// A reader that had enough, such as `head`, closes the pipe; that is no fault of ours.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
});

// Not process.exit(): what was printed into a pipe must still get through.
process.exitCode = await run(process.argv.slice(2), world);
