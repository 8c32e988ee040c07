import type { en } from '../en/index.ts';
import { dock } from './dock.ts';
import { general } from './general.ts';
import { store } from './store.ts';

export const es: typeof en = { general, dock, store };
