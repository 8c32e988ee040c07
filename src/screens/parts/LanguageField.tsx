import { say } from '../../text/index.ts';
import { LANGUAGES, type Language, language } from '../../text/language.ts';
import { chooseLanguage } from '../model/services.ts';

/** Each in its own words: whoever looks for it may not read the language that is on. */
export const OWN_NAMES: Record<Language, string> = { en: 'English', es: 'Español' };

/** The language of all the app says. */
export function LanguageField() {
  return (
    <fieldset class="row">
      <legend class="sr-only">{say().dock.keep.language}</legend>
      {LANGUAGES.map((one) => (
        <button
          key={one}
          type="button"
          class="button"
          lang={one}
          aria-pressed={language.value === one}
          onClick={() => void chooseLanguage(one).catch(() => undefined)}
        >
          {OWN_NAMES[one]}
        </button>
      ))}
    </fieldset>
  );
}
