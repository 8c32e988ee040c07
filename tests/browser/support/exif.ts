/** Just enough EXIF to give a test photo what a phone gives: how it was held, when, and where. */
export interface Exif {
  /** 1 upright, 3 upside down, 6 and 8 on a side. */
  readonly orientation?: number;
  /** Degrees, north and east positive. */
  readonly place?: { readonly latitude: number; readonly longitude: number };
}

const SHORT = 3;
const ASCII = 2;
const LONG = 4;
const RATIONAL = 5;

const ORIENTATION = 0x0112;
const DATE_TIME = 0x0132;
const GPS_IFD = 0x8825;

interface Tag {
  readonly tag: number;
  readonly type: number;
  readonly count: number;
  readonly value: Buffer;
}

const short = (tag: number, value: number): Tag => ({ tag, type: SHORT, count: 1, value: Buffer.from([value, 0]) });
const ascii = (tag: number, text: string): Tag => {
  const value = Buffer.from(`${text}\0`, 'latin1');
  return { tag, type: ASCII, count: value.length, value };
};
const long = (tag: number, number: number): Tag => {
  const value = Buffer.alloc(4);
  value.writeUInt32LE(number);
  return { tag, type: LONG, count: 1, value };
};

/** Degrees as three fractions: degrees, minutes, hundredths of seconds. */
function degrees(tag: number, angle: number): Tag {
  const seconds = Math.round(Math.abs(angle) * 360_000);
  const parts = [Math.floor(seconds / 360_000), Math.floor((seconds / 6_000) % 60), seconds % 6_000];
  const value = Buffer.alloc(24);
  for (const [index, part] of parts.entries()) {
    value.writeUInt32LE(part, index * 8);
    value.writeUInt32LE(index === 2 ? 100 : 1, index * 8 + 4);
  }
  return { tag, type: RATIONAL, count: 3, value };
}

/** One directory of tags as it lies at `offset` in the TIFF block: values over four bytes follow it. */
function directory(tags: readonly Tag[], offset: number): Buffer {
  const table = Buffer.alloc(2 + tags.length * 12 + 4);
  const rest: Buffer[] = [];
  let free = offset + table.length;
  table.writeUInt16LE(tags.length, 0);
  for (const [index, { tag, type, count, value }] of tags.entries()) {
    const at = 2 + index * 12;
    table.writeUInt16LE(tag, at);
    table.writeUInt16LE(type, at + 2);
    table.writeUInt32LE(count, at + 4);
    if (value.length <= 4) value.copy(table, at + 8);
    else {
      table.writeUInt32LE(free, at + 8);
      rest.push(value);
      free += value.length;
    }
  }
  return Buffer.concat([table, ...rest]);
}

function tiff({ orientation = 1, place }: Exif): Buffer {
  const head = Buffer.from('49492a0008000000', 'hex');
  const own = [short(ORIENTATION, orientation), ascii(DATE_TIME, '2026:05:09 10:30:00')];
  if (place === undefined) return Buffer.concat([head, directory(own, 8)]);
  const first = (gps: number) => directory([...own, long(GPS_IFD, gps)], 8);
  const gpsAt = 8 + first(0).length;
  const gps = [
    ascii(1, place.latitude < 0 ? 'S' : 'N'),
    degrees(2, place.latitude),
    ascii(3, place.longitude < 0 ? 'W' : 'E'),
    degrees(4, place.longitude),
  ];
  return Buffer.concat([head, first(gpsAt), directory(gps, gpsAt)]);
}

const EXIF_MARK = Buffer.from('Exif\0\0', 'latin1');

/** The same JPEG with an EXIF block right after its start, where cameras put it. */
export function withExif(jpeg: Buffer, exif: Exif): Buffer {
  const block = Buffer.concat([EXIF_MARK, tiff(exif)]);
  const head = Buffer.from([0xff, 0xe1, 0, 0]);
  head.writeUInt16BE(block.length + 2, 2);
  return Buffer.concat([jpeg.subarray(0, 2), head, block, jpeg.subarray(2)]);
}

/** What EXIF a JPEG carries. `place` says only that there is one: the tests ask whether it is gone. */
export function exifOf(jpeg: Uint8Array): { orientation: number | undefined; place: boolean } | undefined {
  const bytes = Buffer.from(jpeg.buffer, jpeg.byteOffset, jpeg.byteLength);
  if (bytes.readUInt16BE(0) !== 0xffd8) throw new Error('Not a JPEG.');
  for (let at = 2; at + 4 <= bytes.length && bytes[at] === 0xff && bytes[at + 1] !== 0xda; ) {
    const length = bytes.readUInt16BE(at + 2);
    const block = bytes.subarray(at + 4, at + 2 + length);
    if (bytes[at + 1] === 0xe1 && block.subarray(0, 6).equals(EXIF_MARK)) return readTiff(block.subarray(6));
    at += 2 + length;
  }
  return undefined;
}

function readTiff(block: Buffer): { orientation: number | undefined; place: boolean } {
  const little = block.toString('latin1', 0, 2) === 'II';
  const two = (at: number) => (little ? block.readUInt16LE(at) : block.readUInt16BE(at));
  const four = (at: number) => (little ? block.readUInt32LE(at) : block.readUInt32BE(at));
  const start = four(4);
  const entries = Array.from({ length: two(start) }, (_, index) => start + 2 + index * 12);
  const orientation = entries.find((at) => two(at) === ORIENTATION);
  return {
    orientation: orientation === undefined ? undefined : two(orientation + 8),
    place: entries.some((at) => two(at) === GPS_IFD),
  };
}
