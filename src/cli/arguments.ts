import { parseArgs } from 'node:util';
import type { Paper } from '../core/packet/drawing/index.ts';

export type Command = 'adjust' | 'check' | 'convert' | 'draw' | 'table';

/** What `draw` writes. */
export const DRAWN_AS = ['svg', 'dxf', 'points', 'fasteners', 'fittings', 'tiles'] as const;
export type DrawnAs = (typeof DRAWN_AS)[number];

export interface Call {
  command: Command;
  file: string;
  out: string | null;
  name: string | null;
  by: string;
  units: 'in' | 'mm';
  keepGood: boolean;
  json: boolean;
  as: DrawnAs;
  piece: string | null;
  paper: Paper;
}

export type Arguments = { ok: true; call: Call } | { ok: true; help: true } | { ok: false; message: string };

const COMMANDS: readonly string[] = ['adjust', 'check', 'convert', 'draw', 'table'] satisfies Command[];
const isCommand = (word: string | undefined): word is Command => word !== undefined && COMMANDS.includes(word);

const OPTIONS = {
  help: { type: 'boolean', short: 'h' },
  out: { type: 'string' },
  name: { type: 'string' },
  by: { type: 'string', default: 'table' },
  units: { type: 'string', default: 'in' },
  'keep-good': { type: 'boolean', default: false },
  json: { type: 'boolean', default: false },
  as: { type: 'string', default: 'svg' },
  piece: { type: 'string' },
  paper: { type: 'string', default: 'letter' },
} as const;

/** Reads the words behind the program's name. Never throws. */
export function readArguments(words: readonly string[]): Arguments {
  let parsed: ReturnType<typeof parse>;
  try {
    parsed = parse(words);
  } catch (error) {
    return { ok: false, message: error instanceof Error ? error.message : String(error) };
  }
  const { values, positionals } = parsed;
  if (values.help) return { ok: true, help: true };
  const [command, file, ...more] = positionals;
  if (!isCommand(command))
    return { ok: false, message: command === undefined ? 'No command was given.' : `There is no command ${command}.` };
  if (file === undefined) return { ok: false, message: `${command} needs a file.` };
  if (more.length > 0) return { ok: false, message: `${command} takes one file.` };
  const { units, json, paper } = values;
  if (units !== 'in' && units !== 'mm') return { ok: false, message: '--units is in or mm.' };
  if (json && command !== 'adjust') return { ok: false, message: `${command} does not take --json.` };
  const as = DRAWN_AS.find((form) => form === values.as);
  if (as === undefined) return { ok: false, message: `--as is ${DRAWN_AS.join(', ')}.` };
  if (paper !== 'a4' && paper !== 'letter') return { ok: false, message: '--paper is a4 or letter.' };
  if (as === 'tiles' && (values.out ?? '-') === '-')
    return { ok: false, message: '--as tiles writes many files: say where with --out.' };
  const { out = null, name = null, by, piece = null } = values;
  const keepGood = values['keep-good'];
  return { ok: true, call: { command, file, out, name, by, units, keepGood, json, as, piece, paper } };
}

const parse = (words: readonly string[]) =>
  parseArgs({ args: [...words], options: OPTIONS, allowPositionals: true, strict: true });
