import type { en } from '../en/index.ts';
import { cautions } from './cautions.ts';
import { demo } from './demo.ts';
import { dock } from './dock.ts';
import { general } from './general.ts';
import { guide } from './guide.ts';
import { length } from './length.ts';
import { store } from './store.ts';

export const es: typeof en = { general, demo, dock, guide, cautions, length, store };
