type Voices = Pick<SpeechSynthesis, 'getVoices' | 'speak' | 'cancel' | 'speaking' | 'pending'> &
  Pick<EventTarget, 'addEventListener' | 'removeEventListener'>;

/** The parts of the browser that speak. */
export interface SpeechPlatform {
  speechSynthesis?: Voices;
  SpeechSynthesisUtterance?: typeof SpeechSynthesisUtterance;
  /** The language the person reads the phone in, which chooses between accents. */
  language: string;
}

const browserPlatform = (): SpeechPlatform => ({
  ...('speechSynthesis' in window && { speechSynthesis, SpeechSynthesisUtterance }),
  language: navigator.language,
});

/** Some systems write en_US where the web writes en-US. */
const tag = (language: string): string => language.replace('_', '-').toLowerCase();

/**
 * The phone's own voice for a language: never one that sends the text to a service. The person's own accent before
 * another, the system's first choice before another. Null where there is none, or none yet.
 */
export function ownVoice(language: string, platform = browserPlatform()): SpeechSynthesisVoice | null {
  const own = (platform.speechSynthesis?.getVoices() ?? []).filter(
    (voice) => voice.localService && tag(voice.lang).split('-')[0] === language,
  );
  const rank = (voice: SpeechSynthesisVoice): number =>
    (tag(voice.lang) === tag(platform.language) ? 2 : 0) + (voice.default ? 1 : 0);
  return own.sort((a, b) => rank(b) - rank(a))[0] ?? null;
}

/** Says whenever the list of voices changes; several systems fill it only after they were asked. */
export function watchVoices(changed: () => void, { speechSynthesis } = browserPlatform()): () => void {
  speechSynthesis?.addEventListener('voiceschanged', changed);
  return () => speechSynthesis?.removeEventListener('voiceschanged', changed);
}

/** Held until it is spoken: a browser may collect it, and fall silent, while nothing else refers to it. */
let speaking: SpeechSynthesisUtterance | null = null;

/** Speaks in the phone's own voice, and cuts short what it was saying. False where it has none for the language. */
export function speak(text: string, language: string, platform = browserPlatform(), volume = 1): boolean {
  const { speechSynthesis: mouth, SpeechSynthesisUtterance: Utterance } = platform;
  const voice = ownVoice(language, platform);
  if (!mouth || !Utterance || !voice) return false;
  // Asked to stop while silent, some systems swallow what comes next.
  if (mouth.speaking || mouth.pending) mouth.cancel();
  speaking = Object.assign(new Utterance(text), { voice, lang: voice.lang, volume });
  speaking.onend = () => {
    speaking = null;
  };
  mouth.speak(speaking);
  return true;
}

/** iOS lets a page speak later only after it has spoken, even silently, inside a tap. */
export const wakeVoice = (language: string, platform = browserPlatform()): boolean => speak(' ', language, platform, 0);
