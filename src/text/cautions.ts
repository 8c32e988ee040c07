import { cautions } from './en/cautions.ts';
import { inLanguage } from './rooms.ts';

/** What is said of danger, apart from the rest: it comes with the steps. */
export function sayCautions(): typeof cautions {
  return inLanguage('cautions', cautions);
}
