import { describe, expect, it } from 'vitest';
import { hasLocation } from '../../../src/device/photos/index.ts';
import { ascii, exif, jpeg, segment, tiff } from './jpeg.ts';

describe('a picture without a place', () => {
  it.each([
    ['no bytes', new Uint8Array()],
    ['not a JPEG', ascii('\x89PNG GPSLatitude Exif')],
    ['a bare JPEG', jpeg()],
    ['Exif with an orientation only', jpeg(exif({ orientation: 6 }))],
    ['a pointer to an empty GPS directory', jpeg(exif({ gpsEntries: 0 }))],
    ['an XMP segment about something else', jpeg(segment(0xe1, ascii('http://ns.adobe.com/xap/1.0/\0<x:Rating>')))],
    ['GPS tags in the picture data, where they mean nothing', Uint8Array.of(...jpeg(), ...exif({ gpsEntries: 4 }))],
    ['the pointer in a segment that is not Exif', jpeg(segment(0xe2, tiff({ gpsEntries: 4 })))],
    ['a segment cut short', jpeg(exif({ gpsEntries: 4 })).subarray(0, 18)],
    ['a segment of no length', Uint8Array.of(0xff, 0xd8, 0xff, 0xe1, 0, 0, 0, 0)],
    ['a directory beyond the end', jpeg(segment(0xe1, ascii('Exif\0\0II*\0\xff\xff\xff\x7f')))],
  ])('says no: %s', (_name, bytes) => {
    expect(hasLocation(bytes)).toBe(false);
  });
});

describe('a picture with a place', () => {
  it.each([
    ['little-endian', jpeg(exif({ order: 'II', gpsEntries: 4 }))],
    ['big-endian, after an orientation', jpeg(exif({ order: 'MM', orientation: 6, gpsEntries: 4 }))],
    ['after other segments', jpeg(segment(0xe0, ascii('JFIF\0')), segment(0xfe, ascii('hi')), exif({ gpsEntries: 1 }))],
    ['in a second APP1 segment', jpeg(exif({ orientation: 1 }), exif({ gpsEntries: 2 }))],
    ['with fill bytes before the marker', Uint8Array.of(0xff, 0xd8, 0xff, ...exif({ gpsEntries: 2 }), 0xff, 0xd9)],
    ['in XMP', jpeg(segment(0xe1, ascii('http://ns.adobe.com/xap/1.0/\0<x exif:GPSLatitude="57,1N"/>')))],
  ])('says yes: %s', (_name, bytes) => {
    expect(hasLocation(bytes)).toBe(true);
    expect(hasLocation(bytes.slice().buffer)).toBe(true);
  });
});
