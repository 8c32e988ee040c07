import { demo } from './en/demo.ts';
import { inLanguage } from './rooms.ts';

/** The invented people and boat of the demo, apart from the rest. */
export function sayDemo(): typeof demo {
  return inLanguage('demo', demo);
}
