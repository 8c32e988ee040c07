/** Packets as files: written and read without holding them in memory whole. */
export { type PacketFileReading, type PhotoBytes, type ReadFileOptions, readPacketFile } from './read.ts';
export { type WriteOptions, writePacketFile } from './write.ts';
