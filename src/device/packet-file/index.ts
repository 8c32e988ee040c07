/** Packets and backups as files: written and read without holding them in memory whole, beside the page where that can be. */
export {
  makeBackupBeside as makeBackup,
  makePacketFileBeside as makePacketFile,
  readBackupBeside as readBackup,
  readPacketFileBeside as readPacketFile,
} from './beside.ts';
export type { PhotoBytes } from './read.ts';
export { type BackupFound, type BackupRefusal, jobOutOf, looksLikeBackup, photoOutOf } from './read-backup.ts';
export { writePacketFile } from './write.ts';
export type { BackupFile } from './write-backup.ts';
