/** Work that travels between shop and phone inside an address: what is to be measured, and what is asked again. */
export { entriesForDock } from './ask.ts';
export { codeInText, type Link, type LinkRefusal, linkAddress, readLink, writeLink } from './link.ts';
export { type JobRequest, requestEntries, requestOf } from './request.ts';
