/** Builds small JPEG files by hand: enough of the format to carry an Exif block, with or without a place. */

interface ExifOptions {
  /** Byte order of the TIFF block. */
  order?: 'II' | 'MM';
  /** Exif orientation 1..8; left out when undefined. */
  orientation?: number;
  /** Entries in the GPS directory; no pointer to one when undefined. */
  gpsEntries?: number;
}

const ORIENTATION = 0x0112;
const GPS_POINTER = 0x8825;
const SHORT = 3;
const LONG = 4;

/** A TIFF block: header, first directory, GPS directory. */
export function tiff({ order = 'II', orientation, gpsEntries }: ExifOptions): Uint8Array {
  const little = order === 'II';
  const count = Number(orientation !== undefined) + Number(gpsEntries !== undefined);
  const gpsAt = 8 + 2 + count * 12 + 4;
  const data = new DataView(new ArrayBuffer(gpsAt + 2 + (gpsEntries ?? 0) * 12 + 4));
  data.setUint16(0, little ? 0x4949 : 0x4d4d);
  data.setUint16(2, 42, little);
  data.setUint32(4, 8, little);
  data.setUint16(8, count, little);
  let at = 10;
  const put = (tag: number, type: number, value: number): void => {
    data.setUint16(at, tag, little);
    data.setUint16(at + 2, type, little);
    data.setUint32(at + 4, 1, little);
    if (type === SHORT) data.setUint16(at + 8, value, little);
    else data.setUint32(at + 8, value, little);
    at += 12;
  };
  if (orientation !== undefined) put(ORIENTATION, SHORT, orientation);
  if (gpsEntries !== undefined) put(GPS_POINTER, LONG, gpsAt);
  data.setUint16(gpsAt, gpsEntries ?? 0, little);
  return new Uint8Array(data.buffer);
}

export function segment(marker: number, content: Uint8Array): Uint8Array {
  const length = content.length + 2;
  return Uint8Array.of(0xff, marker, length >> 8, length & 255, ...content);
}

export const ascii = (text: string): Uint8Array => Uint8Array.from(text, (letter) => letter.charCodeAt(0));

export const exif = (options: ExifOptions): Uint8Array =>
  segment(0xe1, Uint8Array.of(...ascii('Exif\0\0'), ...tiff(options)));

/** Start of image, the segments, a start of scan with some data, end of image. */
export function jpeg(...segments: Uint8Array[]): Uint8Array {
  const scan = segment(0xda, Uint8Array.of(1, 2, 3));
  return Uint8Array.of(0xff, 0xd8, ...segments.flatMap((one) => [...one]), ...scan, 9, 9, 9, 0xff, 0xd9);
}
