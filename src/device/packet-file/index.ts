/** Packets as files: written and read without holding them in memory whole, beside the page where that can be. */
export { makePacketFileBeside as makePacketFile, readPacketFileBeside as readPacketFile } from './beside.ts';
export type { PhotoBytes } from './read.ts';
export { writePacketFile } from './write.ts';
