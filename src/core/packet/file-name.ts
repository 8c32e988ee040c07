import type { Sheet } from '../job/index.ts';

/** Media types and endings under which the system may hand a packet to the app. */
export const PACKET_FILE_TYPES: Record<string, string[]> = {
  'application/json': ['.json'],
  'text/plain': ['.json.txt', '.txt'],
  'text/csv': ['.csv'],
};

/** Common file systems allow 255 bytes to a name; this leaves room for an ending and a copy's number. */
const PART_BYTES = 80;

/**
 * A name by which a person finds the packet again: day, customer, boat (or the job's name), and four characters
 * of the job's id to tell two jobs of a day apart. Letters of any script are kept; everything a file system, a
 * shell or a reader of the name could take for something else is not.
 */
export function packetFileName(
  sheet: { readonly job: Sheet['job']; readonly details: Pick<Sheet['details'], 'name' | 'customer' | 'boat'> },
  made: { readonly at: string },
): string {
  const { customer, boat, name } = sheet.details;
  const named = [customer, boat].map(harmless).filter((part) => part !== '');
  const about = named.length > 0 ? named : [harmless(name)].filter((part) => part !== '');
  const day = /^\d{4}-\d{2}-\d{2}/.exec(made.at)?.[0];
  const tail = harmless(sheet.job?.slice(-4) ?? '');
  return `${[day, ...about, tail].filter((part) => part !== undefined && part !== '').join(' - ')}.json`.replace(
    // The day stands before the first name without a dash, as people write it.
    /^(\d{4}-\d{2}-\d{2}) - /,
    '$1 ',
  );
}

function harmless(text: string): string {
  const kept = text
    .normalize('NFC')
    .replace(/[^\p{L}\p{M}\p{N} ._,'()&+-]/gu, ' ')
    .replace(/\.{2,}/g, '.');
  return bounded(tidyEnds(kept)).replace(/[ .-]+$/, '');
}

const tidyEnds = (text: string): string => text.replace(/\s+/g, ' ').replace(/^[\p{M} .-]+|[ .-]+$/gu, '');

/** Cut between characters, counted in the UTF-8 bytes that file systems count. */
function bounded(text: string): string {
  let bytes = 0;
  let result = '';
  for (const letter of text) {
    const code = letter.codePointAt(0) ?? 0;
    bytes += code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4;
    if (bytes > PART_BYTES) break;
    result += letter;
  }
  return result;
}
