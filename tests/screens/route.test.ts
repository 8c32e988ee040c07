import { expect, it } from 'vitest';
import { parseRoute, type Route, routeHash } from '../../src/screens/model/route.ts';

const routes: Route[] = [
  { at: 'jobs' },
  { at: 'new' },
  { at: 'keep' },
  { at: 'shop' },
  { at: 'paper', kind: 'open-bow' },
  { at: 'sheet', job: 'j', piece: 'p' },
  { at: 'job', job: 'j' },
  { at: 'walk', job: 'j', piece: 'p' },
  { at: 'step', job: 'j', piece: 'p', step: 'A-B' },
  { at: 'step', job: 'j', piece: 'p', step: 'odd/slot %' },
  { at: 'step', job: 'j', piece: 'p', step: 'table' },
  { at: 'table', job: 'j', piece: 'p', table: 'gaps-odd slot' },
  { at: 'table', job: 'j', piece: 'p', table: 'marks', cell: 'r' },
  { at: 'change', job: 'j', piece: 'p', what: 'points' },
  { at: 'step', job: 'j', piece: 'p', step: 'A-B', photos: true },
  { at: 'details', job: 'j' },
  { at: 'things', job: 'j', piece: 'p', thing: null },
  { at: 'things', job: 'j', piece: 'p', thing: 't' },
  { at: 'leave', job: 'j' },
  { at: 'send', job: 'j' },
  { at: 'link', code: 'VAEA7m1Q-_z' },
  { at: 'link', code: '' },
  { at: 'inbox' },
  { at: 'request', job: null },
  { at: 'request', job: 'j' },
  { at: 'judge', job: 'j' },
  { at: 'print', job: 'j', piece: 'p', as: 'sheet' },
  { at: 'print', job: 'j', piece: 'p', as: 'tiles' },
];

it.each(routes)('reads its own address again: %o', (route) => {
  expect(parseRoute(routeHash(route))).toEqual(route);
});

it.each(['', '#', '#/', '#/nowhere/at/all', '#/job', '#/send/', '#/%E0%A4%A'])('lands at the jobs from %s', (hash) => {
  expect(parseRoute(hash)).toEqual({ at: 'jobs' });
});
