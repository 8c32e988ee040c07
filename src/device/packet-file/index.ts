/** Packets as files: written and read without holding them in memory whole. */
export { type PhotoBytes, readPacketFile } from './read.ts';
export { writePacketFile } from './write.ts';
