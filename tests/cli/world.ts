import { run, type World } from '../../src/cli/run.ts';
import { counter } from '../core/packet/sample.ts';

/** A world of one file, called `file.csv`, that writes down what happens to it. */
function world(text: string, input = '') {
  const said = { out: '', err: '', files: new Map<string, string>() };
  const encode = (content: string): Uint8Array<ArrayBuffer> => Uint8Array.from(Buffer.from(content));
  const made: World = {
    readFile: async (path) => {
      if (path !== 'dir/file.csv') throw new Error(`no such file ${path}`);
      return encode(text);
    },
    readInput: async () => encode(input),
    writeFile: async (path, content) => void said.files.set(path, content),
    print: (content) => {
      said.out += content;
    },
    complain: (content) => {
      said.err += content;
    },
    now: () => '2026-11-25T09:30:00.000Z',
    newId: counter(),
  };
  return { made, said };
}

/** Runs the program on that file; what it answered, said and wrote. */
export async function call(words: string, text: string, input = '') {
  const { made, said } = world(text, input);
  const code = await run(words.split(' '), made);
  return { code, ...said };
}
