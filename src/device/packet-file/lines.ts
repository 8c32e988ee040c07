/** One line of a file with its line feed, and where it lies in the file. */
export interface FileLine {
  bytes: Uint8Array<ArrayBuffer>;
  from: number;
  to: number;
}

const CHUNK = 1 << 20;
const LINE_FEED = 0x0a;
/** No picture that the app stores comes near this. */
const LONGEST = 64 << 20;

/**
 * The lines of a file, one after the other, with no more than one of them in memory.
 * @throws RangeError where one is longer than any can be
 */
export async function* readLines(file: Blob): AsyncGenerator<FileLine> {
  let open: Uint8Array<ArrayBuffer>[] = [];
  let [openSize, from] = [0, 0];
  for (let at = 0; at < file.size; at += CHUNK) {
    const chunk = new Uint8Array(await file.slice(at, at + CHUNK).arrayBuffer());
    let start = 0;
    for (let end = chunk.indexOf(LINE_FEED); end >= 0; end = chunk.indexOf(LINE_FEED, start)) {
      const bytes = joined(open, openSize, chunk.subarray(start, end + 1));
      yield { bytes, from, to: from + bytes.length };
      from += bytes.length;
      [open, openSize, start] = [[], 0, end + 1];
    }
    if (start < chunk.length) open.push(chunk.subarray(start));
    openSize += chunk.length - start;
    if (openSize > LONGEST) throw new RangeError('no line is so long');
  }
  if (openSize > 0) yield { bytes: joined(open, openSize, new Uint8Array()), from, to: from + openSize };
}

function joined(parts: readonly Uint8Array[], size: number, last: Uint8Array<ArrayBuffer>): Uint8Array<ArrayBuffer> {
  if (parts.length === 0) return last;
  const whole = new Uint8Array(size + last.length);
  let at = 0;
  for (const part of [...parts, last]) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
