import { codeInText } from '../../core/packet/link/index.ts';
import { sayLinks } from '../../text/links.ts';
import { go } from './route.ts';
import { type TakenIn, takeIn } from './take-in.ts';

/** Takes in what somebody pasted: a link is opened, a packet or a table taken in. Null: the screen has gone to the link. */
export async function takePasted(text: string): Promise<TakenIn | null> {
  const code = codeInText(text);
  if (code !== null) {
    go({ at: 'link', code });
    return null;
  }
  return takeIn(new Blob([text]), sayLinks().paste.name);
}
