import 'fake-indexeddb/auto';
import { speakIn } from '../src/text/index.ts';

await speakIn('en');
