import { describe, expect, it } from 'vitest';
import { ownVoice, type SpeechPlatform, speak, wakeVoice, watchVoices } from '../../src/device/speech.ts';
import { canVibrate, pulse } from '../../src/device/vibrate.ts';

const voice = (lang: string, own: boolean, first = false): SpeechSynthesisVoice => ({
  lang,
  localService: own,
  default: first,
  name: `${lang}${own ? '' : ' by network'}`,
  voiceURI: lang,
});

interface Said {
  text: string;
  voice: string;
  volume: number;
}

/** A mouth that notes what it is told; what it says lasts until it is told to stop. */
function mouth(voices: SpeechSynthesisVoice[], language = 'en-US') {
  const said: Said[] = [];
  const cut: string[] = [];
  class Utterance {
    voice: SpeechSynthesisVoice | null = null;
    volume = 1;
    onend: (() => void) | null = null;
    readonly text: string;
    constructor(text: string) {
      this.text = text;
    }
  }
  const speech = Object.assign(new EventTarget(), {
    speaking: false,
    pending: false,
    getVoices: () => voices,
    speak(utterance: Utterance) {
      speech.speaking = true;
      said.push({ text: utterance.text, voice: utterance.voice?.name ?? '', volume: utterance.volume });
    },
    cancel() {
      speech.speaking = false;
      cut.push(said.at(-1)?.text ?? '');
    },
  });
  const platform = {
    speechSynthesis: speech,
    SpeechSynthesisUtterance: Utterance,
    language,
  } as unknown as SpeechPlatform;
  return { platform, said, cut, speech };
}

describe("the phone's own voice", () => {
  it('is never one that needs a network, whatever the system prefers', () => {
    const { platform } = mouth([voice('en-US', false, true), voice('en-GB', true)]);
    expect(ownVoice('en', platform)?.name).toBe('en-GB');
    expect(ownVoice('en', mouth([voice('en-US', false, true)]).platform)).toBeNull();
  });

  it('speaks the language of the words, with the accent of the phone where it has it', () => {
    const voices = [voice('de-DE', true, true), voice('en-GB', true, true), voice('en_US', true)];
    expect(ownVoice('en', mouth(voices, 'en-US').platform)?.lang).toBe('en_US');
    expect(ownVoice('en', mouth(voices, 'de-DE').platform)?.lang).toBe('en-GB');
    expect(ownVoice('en', mouth([voice('de-DE', true)]).platform)).toBeNull();
  });

  it('is missing where the browser does not speak at all', () => {
    expect(ownVoice('en', { language: 'en' })).toBeNull();
    expect(speak('forty-seven', 'en', { language: 'en' })).toBe(false);
  });

  it('is looked for again when the system has filled its list', () => {
    const { platform, speech } = mouth([]);
    let changes = 0;
    const stop = watchVoices(() => {
      changes += 1;
    }, platform);
    speech.dispatchEvent(new Event('voiceschanged'));
    stop();
    speech.dispatchEvent(new Event('voiceschanged'));
    expect(changes).toBe(1);
  });

  it('says the latest value and cuts short the one before; what is silent is not stopped', () => {
    const { platform, said, cut } = mouth([voice('en-US', true)]);
    expect(speak('one', 'en', platform)).toBe(true);
    expect(cut).toEqual([]);
    speak('two', 'en', platform);
    expect(cut).toEqual(['one']);
    expect(said.map(({ text }) => text)).toEqual(['one', 'two']);
  });

  it('is woken without a sound', () => {
    const { platform, said } = mouth([voice('en-US', true)]);
    expect(wakeVoice('en', platform)).toBe(true);
    expect(said).toEqual([{ text: ' ', voice: 'en-US', volume: 0 }]);
  });
});

describe('the pulse', () => {
  it('is one for recorded and two for look again', () => {
    const felt: number[][] = [];
    const vibrate = (pattern: number[]): boolean => felt.push(pattern) > 0;
    pulse('once', { vibrate });
    pulse('twice', { vibrate });
    expect(felt.map((pattern) => pattern.length)).toEqual([1, 3]);
    expect(canVibrate({ vibrate })).toBe(true);
  });

  it('is nothing where a phone has none', () => {
    expect(canVibrate({})).toBe(false);
    expect(() => pulse('once', {})).not.toThrow();
  });
});
