import { deflateSync, inflateSync } from 'node:zlib';

const SIGNATURE = Buffer.from('89504e470d0a1a0a', 'hex');
const COLOURS = 256;
/** Colours nearer to each other than this (squared) share a place while others have none. */
const ALIKE = 64;

/**
 * Rewrites a browser's screenshot (8 bits a channel, RGB, not interlaced) with a palette of 256 of its colours, frequent
 * and unlike ones first; every other colour becomes the nearest of those. A third of the size, and hardly a difference
 * on screens of flat colour. Deterministic.
 */
export function smallPng(png: Buffer): Buffer {
  const chunks = chunksOf(png);
  const header = chunks.find(({ type }) => type === 'IHDR')?.data;
  if (header?.readUInt16BE(8) !== 0x0802 || header[12] !== 0) throw new Error('Not a plain RGB screenshot.');
  const [width, height] = [header.readUInt32BE(0), header.readUInt32BE(4)];
  const packed = Buffer.concat(chunks.filter(({ type }) => type === 'IDAT').map(({ data }) => data));
  const pixels = unfiltered(inflateSync(packed), width * 3, height);
  const { palette, indexOf } = paletteOf(pixels);
  const rows = Buffer.alloc((width + 1) * height);
  for (let y = 0; y < height; y += 1)
    for (let x = 0; x < width; x += 1)
      rows[y * (width + 1) + 1 + x] = indexOf.get(pixels.readUIntBE((y * width + x) * 3, 3)) ?? 0;
  const newHeader = Buffer.from(header);
  newHeader[9] = 3;
  return Buffer.concat([
    SIGNATURE,
    chunk('IHDR', newHeader),
    chunk('PLTE', Buffer.from(palette.flatMap((colour) => [colour >> 16, (colour >> 8) & 255, colour & 255]))),
    chunk('IDAT', deflateSync(rows, { level: 9 })),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

function chunksOf(png: Buffer): { type: string; data: Buffer }[] {
  const chunks: { type: string; data: Buffer }[] = [];
  for (let at = SIGNATURE.length; at < png.length; ) {
    const length = png.readUInt32BE(at);
    chunks.push({ type: png.toString('latin1', at + 4, at + 8), data: png.subarray(at + 8, at + 8 + length) });
    at += length + 12;
  }
  return chunks;
}

/** Takes the filters off (PNG specification, clause 9), three bytes a pixel. */
function unfiltered(raw: Buffer, stride: number, height: number): Buffer {
  const out = Buffer.alloc(stride * height);
  for (let y = 0; y < height; y += 1) {
    const filter = raw[y * (stride + 1)];
    for (let x = 0; x < stride; x += 1) {
      const at = y * stride + x;
      const left = x < 3 ? 0 : (out[at - 3] ?? 0);
      const up = y === 0 ? 0 : (out[at - stride] ?? 0);
      const corner = x < 3 || y === 0 ? 0 : (out[at - stride - 3] ?? 0);
      const guess = [0, left, up, (left + up) >> 1, paeth(left, up, corner)][filter ?? 0] ?? 0;
      out[at] = (raw[y * (stride + 1) + 1 + x] ?? 0) + guess;
    }
  }
  return out;
}

function paeth(left: number, up: number, corner: number): number {
  const [a, b, c] = [Math.abs(up - corner), Math.abs(left - corner), Math.abs(left + up - 2 * corner)];
  return a <= b && a <= c ? left : b <= c ? up : corner;
}

/** indexOf: the palette's place for every colour of the picture. */
function paletteOf(pixels: Buffer): { palette: number[]; indexOf: ReadonlyMap<number, number> } {
  const counts = new Map<number, number>();
  for (let at = 0; at < pixels.length; at += 3) {
    const colour = pixels.readUIntBE(at, 3);
    counts.set(colour, (counts.get(colour) ?? 0) + 1);
  }
  const frequent = [...counts].sort(([a, m], [b, n]) => n - m || a - b).map(([colour]) => colour);
  const palette: number[] = [];
  for (const colour of frequent)
    if (palette.length < COLOURS && palette.every((other) => distance(colour, other) >= ALIKE)) palette.push(colour);
  const nearest = (colour: number): number => {
    const distances = palette.map((other) => distance(colour, other));
    return distances.indexOf(Math.min(...distances));
  };
  return { palette, indexOf: new Map(frequent.map((colour) => [colour, nearest(colour)])) };
}

function distance(a: number, b: number): number {
  const [red, green, blue] = [16, 8, 0].map((bits) => ((a >> bits) & 255) - ((b >> bits) & 255));
  return (red ?? 0) ** 2 + (green ?? 0) ** 2 + (blue ?? 0) ** 2;
}

function chunk(type: string, data: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const [length, check] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(data.length);
  check.writeUInt32BE(crc(body));
  return Buffer.concat([length, body, check]);
}

/** CRC-32 as PNG has it. */
function crc(bytes: Buffer): number {
  let value = 0xffffffff;
  for (const byte of bytes) {
    value ^= byte;
    for (let bit = 0; bit < 8; bit += 1) value = value & 1 ? (value >>> 1) ^ 0xedb88320 : value >>> 1;
  }
  return (value ^ 0xffffffff) >>> 0;
}
