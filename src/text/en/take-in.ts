import type { PacketRefusal, RowFault } from '../../core/packet/index.ts';

/** What came of a file. */
export const takeIn = {
  added: (added: number, name: string) =>
    added === 0
      ? `${name}: nothing new, everything was here already.`
      : `${name}: ${added} new ${added === 1 ? 'entry' : 'entries'}.`,
  setAside: (count: number) =>
    `${count === 1 ? 'One entry' : `${count} entries`} carried a known number with other content and ${count === 1 ? 'was' : 'were'} set aside. What was here stays.`,
  refused: 'Refused. What is stored was not touched.',
  isBackup: 'This is a backup of a whole device. Open “This device” and restore it there.',
  missingPhotos: (count: number) =>
    `${count === 1 ? 'One photo is' : `${count} photos are`} named in it but not inside.`,
  why: {
    'not-json': 'This is not a packet: it cannot be read as one.',
    foreign: 'This file is something else, not a packet.',
    newer: 'This packet was made by a newer version. Update the app, then open it again.',
    damaged: 'This packet is damaged: its content does not match its seal. Ask for it again.',
    unreadable: 'Parts of this packet cannot be understood.',
    empty: 'The file is empty.',
    'two-jobs': 'This packet mixes two jobs.',
  } satisfies Record<PacketRefusal['why'], string>,
  tables: {
    'not-a-table': 'The table lacks columns.',
    empty: 'The table has no rows.',
    'too-long': 'That table is longer than any boat. Is it the right file?',
    'rows-refused': 'These rows were not understood:',
  },
  columns: (columns: readonly string[]) => `Missing: ${columns.join(', ')}.`,
  row: (line: number, fault: string, column: string, understood: string) =>
    `Line ${line}${column && `, ${column}`}: ${fault}.${understood && ` Understood: ${understood}.`}`,
  rowFaults: {
    'unknown-kind': 'no such kind of reading',
    'missing-cell': 'a cell is empty that is needed',
    'column-not-used': 'this kind has no such column',
    'unreadable-cell': 'cannot be read',
    'text-too-long': 'too long',
    'same-point-twice': 'the same point twice',
    'star-needs-flat': '* is only for flat',
    'comma-in-number': 'a comma in a number',
    'too-many-cells': 'more cells than columns',
    'text-after-quote': 'text after a closing quote',
    'open-quote': 'a quote that is never closed',
    'known-twice': 'this point was given a place before',
    'sides-contradict': 'contradicts the side given before',
    'run-out-of-line': 'does not fit its run',
    'run-whole-twice': 'this run has two whole lengths',
  } satisfies Record<RowFault, string>,
};
