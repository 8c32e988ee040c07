const SOI = 0xffd8;
const APP1 = 0xffe1;
const START_OF_SCAN = 0xffda;
const END_OF_IMAGE = 0xffd9;
const GPS_IFD_POINTER = 0x8825;
const EXIF_HEADER = 'Exif\0\0';
const XMP_GPS = 'GPSLatitude';

/**
 * Whether a JPEG carries a place: an Exif segment (APP1) whose first directory points to a GPS directory with
 * anything in it, or an XMP segment that names a latitude. False for anything that is not a JPEG.
 */
export function hasLocation(bytes: ArrayBuffer | Uint8Array): boolean {
  const view = bytes instanceof Uint8Array ? bytes : new Uint8Array(bytes);
  return app1Segments(view).some((segment) =>
    textAt(segment, 0, 6) === EXIF_HEADER ? hasGps(segment.subarray(6)) : hasXmpGps(segment),
  );
}

function app1Segments(bytes: Uint8Array): Uint8Array[] {
  const data = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const found: Uint8Array[] = [];
  if (data.byteLength < 4 || data.getUint16(0) !== SOI) return found;
  let at = 2;
  while (at + 4 <= data.byteLength) {
    const marker = data.getUint16(at);
    // Fill bytes before a marker are allowed.
    if (marker === 0xffff) {
      at += 1;
      continue;
    }
    if (marker >> 8 !== 0xff || marker === START_OF_SCAN || marker === END_OF_IMAGE) break;
    const length = data.getUint16(at + 2);
    if (length < 2) break;
    if (marker === APP1) found.push(bytes.subarray(at + 4, Math.min(at + 2 + length, bytes.length)));
    at += 2 + length;
  }
  return found;
}

/** tiff: the TIFF block inside Exif; every offset counts from its first byte. */
function hasGps(tiff: Uint8Array): boolean {
  const data = new DataView(tiff.buffer, tiff.byteOffset, tiff.byteLength);
  const order = textAt(tiff, 0, 2);
  if (data.byteLength < 8 || (order !== 'II' && order !== 'MM')) return false;
  const little = order === 'II';
  const first = data.getUint32(4, little);
  for (let i = 0; i < entriesOf(data, first, little); i += 1) {
    const entry = first + 2 + i * 12;
    if (entry + 12 > data.byteLength) return false;
    if (data.getUint16(entry, little) !== GPS_IFD_POINTER) continue;
    return entriesOf(data, data.getUint32(entry + 8, little), little) > 0;
  }
  return false;
}

function entriesOf(data: DataView, directory: number, little: boolean): number {
  return directory + 2 <= data.byteLength ? data.getUint16(directory, little) : 0;
}

function hasXmpGps(segment: Uint8Array): boolean {
  return new TextDecoder('latin1').decode(segment).includes(XMP_GPS);
}

function textAt(bytes: Uint8Array, from: number, length: number): string {
  return String.fromCharCode(...bytes.subarray(from, from + length));
}
