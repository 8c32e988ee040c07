import { basename, extname } from 'node:path';
import { check } from '../core/check/index.ts';
import { type Entry, fold, type Sheet } from '../core/job/index.ts';
import { buildPacket, type Packet, readTable, writeTable } from '../core/packet/index.ts';
import { readPacketFile, writePacketFile } from '../device/packet-file/index.ts';
import { adjusted } from './adjust.ts';
import { adjustedText } from './adjust-text.ts';
import { type Call, readArguments } from './arguments.ts';
import { drawn } from './draw.ts';
import { labelled } from './labels.ts';
import { refusalSentence, rowSentence, tableSentences, USAGE } from './usage.ts';

/** The world as the program sees it: files, streams, clock, ids. */
export interface World {
  readFile(path: string): Promise<Uint8Array<ArrayBuffer>>;
  readInput(): Promise<Uint8Array<ArrayBuffer>>;
  writeFile(path: string, text: string): Promise<void>;
  print(text: string): void;
  complain(text: string): void;
  now(): string;
  newId(): string;
}

const FINE = 0;
const STOP = 1;
const NOT_UNDERSTOOD = 2;

/** A job out of a file, whichever kind of file it was. packet: as it was read, null out of a table. */
interface Job {
  entries: Entry[];
  sheet: Sheet;
  packet: Packet | null;
}

/** Runs the program; the answer is its exit code. Never throws: what goes wrong is said and ends in 2. */
export async function run(words: readonly string[], world: World): Promise<number> {
  const read = readArguments(words);
  if (!read.ok) {
    world.complain(`${read.message}\n\n${USAGE}`);
    return NOT_UNDERSTOOD;
  }
  if ('help' in read) {
    world.print(USAGE);
    return FINE;
  }
  try {
    const job = await jobOf(read.call, world);
    return job ? await act(read.call, job, world) : NOT_UNDERSTOOD;
  } catch (error) {
    world.complain(`A file cannot be read or written: ${error instanceof Error ? error.message : String(error)}.\n`);
    return NOT_UNDERSTOOD;
  }
}

async function jobOf(call: Call, world: World): Promise<Job | null> {
  const bytes = call.file === '-' ? await world.readInput() : await world.readFile(call.file);
  const file = await readPacketFile(new Blob([bytes]));
  if (!file.ok) {
    world.complain(`${refusalSentence(file)}\n`);
    return null;
  }
  if (file.kind === 'packet') return { entries: file.packet.logbook, sheet: file.packet.sheet, packet: file.packet };
  const table = readTable(file.text, tableContext(call, world));
  if (!table.ok) {
    world.complain(`${tableSentences(table).join('\n')}\n`);
    return null;
  }
  for (const refusal of table.refused) world.complain(`${rowSentence(refusal)}\n`);
  for (const heading of table.unknownColumns)
    world.complain(`The column ${heading} is not known and was passed over.\n`);
  return { entries: table.entries, sheet: fold(table.entries), packet: null };
}

function tableContext(call: Call, world: World) {
  const fileName = call.file === '-' ? 'table' : basename(call.file, extname(call.file));
  const name = (call.name ?? fileName).slice(0, 400);
  const who = { name: call.by.slice(0, 400), role: 'bench' as const };
  const { units, keepGood } = call;
  return { name, piece: name, units, who, device: world.newId(), newId: world.newId, now: world.now, keepGood };
}

async function act(call: Call, job: Job, world: World): Promise<number> {
  switch (call.command) {
    case 'check': {
      const findings = check(job.sheet);
      world.print(
        `${JSON.stringify(
          findings.map((finding) => labelled(finding, job.sheet)),
          null,
          2,
        )}\n`,
      );
      return findings.some((finding) => finding.severity === 'stop') ? STOP : FINE;
    }
    case 'adjust': {
      const result = adjusted(job.sheet);
      await put(call, call.json ? `${JSON.stringify(result, null, 2)}\n` : adjustedText(result), world);
      return result.stop ? STOP : FINE;
    }
    case 'draw': {
      const made = drawn(job, call);
      if (!made.ok) {
        world.complain(`${made.message}\n`);
        return NOT_UNDERSTOOD;
      }
      for (const { ending, text } of made.files) await put(call, text, world, ending);
      return FINE;
    }
    case 'table':
      await put(call, writeTable(job.sheet), world);
      return FINE;
    case 'convert': {
      if (job.packet) {
        world.complain('The file is a packet already.\n');
        return NOT_UNDERSTOOD;
      }
      const [first] = job.entries;
      if (!first) return NOT_UNDERSTOOD;
      const made = { at: world.now(), device: first.device, by: first.who };
      const packet = buildPacket({ entries: job.entries, made, photos: [], check: (sheet) => check(sheet) });
      const file = await writePacketFile(packet, () => Promise.resolve(null));
      await put(call, `${await file.text()}\n`, world);
      return FINE;
    }
  }
}

/** ending: of one of several files that go by one name, in place of the name's own. */
async function put(call: Call, text: string, world: World, ending = ''): Promise<void> {
  if (call.out === null || call.out === '-') world.print(text);
  else await world.writeFile(ending === '' ? call.out : call.out.replace(/\.svg$/i, '') + ending, text);
}
