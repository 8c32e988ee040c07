/** The packet: the document a job travels in, and the readings table that becomes one. */
export { decodeBase64, decodeBase64Text, encodeBase64 } from './base64.ts';
export { buildPacket } from './build.ts';
export type { Packet, PacketPhoto } from './document.ts';
export { packetFileName } from './file-name.ts';
export { type PacketNote, type PacketRefusal, type ReadOptions, readPacket } from './read.ts';
export { sealOf, sha256Hex } from './seal.ts';
export {
  readShopFile,
  type ShopFileContent,
  type ShopFileRefusal,
  writeShopFile,
} from './shop-file.ts';
export { readTable, type TableContext, type TableReading } from './table.ts';
export { looksLikeTable } from './table-columns.ts';
export type { RowFault, RowRefusal } from './table-row.ts';
export { writeTable } from './table-write.ts';
