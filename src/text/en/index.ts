import { dock } from './dock.ts';
import { general } from './general.ts';
import { store } from './store.ts';

export const en = { general, dock, store };
