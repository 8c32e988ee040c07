import { useEffect, useState } from 'preact/hooks';
import type { PieceKind } from '../../../core/job/index.ts';
import { loadPieceWords } from '../../../text/guides.ts';
import { bringWords } from '../../../text/index.ts';
import { type Language, language, languageAmong, saidIn } from '../../../text/language.ts';

/**
 * Says things in the language of whoever a message goes to; null until its words have come. Where they cannot, it is said in
 * the shop's own.
 */
export function useWordsOf(wish: string | undefined, kinds: readonly PieceKind[]): (<T>(work: () => T) => T) | null {
  const reader = wish === undefined ? language.value : languageAmong([wish]);
  const [come, setCome] = useState<Language | null>(reader === language.value ? reader : null);
  useEffect(() => {
    void Promise.all([bringWords(reader), loadPieceWords(kinds, reader)]).then(
      () => setCome(reader),
      () => setCome(language.value),
    );
  }, [reader]);
  return come === null ? null : (work) => saidIn(come, work);
}
