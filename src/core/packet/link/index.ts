/** Work that travels between shop and phone inside an address: what is to be measured, and what is asked again. */
export { entriesForDock } from './ask.ts';
export { codeInText, type Link, linkAddress } from './link.ts';
export { type LinkReading, type LinkRefusal, readLink } from './read-link.ts';
export type { JobRequest } from './request.ts';
export { requestEntries, requestFault, requestOf } from './request-entries.ts';
export { writeLink } from './write-link.ts';
