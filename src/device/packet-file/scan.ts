/** Where a photo's base64 lies in a file, in bytes; `to` is past its last. escaped: it holds backslashes. */
export interface Lifted {
  from: number;
  to: number;
  escaped: boolean;
}

const QUOTE = 0x22;
const BACKSLASH = 0x5c;
const COMMA = 0x2c;
const COLON = 0x3a;
const OPEN_LIST = 0x5b;
const CLOSE_LIST = 0x5d;
const OPEN = 0x7b;
const CLOSE = 0x7d;
/** The document, its list of photos, one photo. */
const PHOTO_DEPTH = 3;
const LONGEST_KEY = 16;

/**
 * Reads JSON piece by piece and takes out the strings at `photos/<n>/data`, leaving an empty string in each place, so
 * that what remains is small and can be parsed whole. Where a key is written with escapes its string simply stays.
 * Broken JSON is not noticed here: it stays broken in what remains.
 */
export class PhotoScanner {
  /** What remains of the file, in order. */
  readonly rest: Uint8Array<ArrayBuffer>[] = [];
  restBytes = 0;
  /** By the photo's place in its list; of two in one photo the last counts, as in JSON. */
  readonly lifted = new Map<number, Lifted>();
  #depth = 0;
  #kinds: number[] = [];
  #keys: string[] = [];
  #photo = 0;
  #inString = false;
  #escape = false;
  #word: number[] = [];
  #lifting: Lifted | null = null;

  /** at: the place of the chunk's first byte in the file. Chunks come in order, without gaps. */
  push(chunk: Uint8Array, at: number): void {
    let keptFrom = 0;
    let index = 0;
    while (index < chunk.length) {
      if (this.#lifting) {
        index = this.#lift(chunk, index, at);
        keptFrom = index;
      } else if (this.#inString) index = this.#string(chunk, index);
      else {
        const byte = chunk[index] as number;
        index += 1;
        if (byte !== QUOTE) this.#structure(byte);
        else if (this.#atPhotoData()) {
          this.#keep(chunk, keptFrom, index);
          this.#lifting = { from: at + index, to: at + index, escaped: false };
        } else {
          this.#inString = true;
          this.#word = [];
        }
      }
    }
    if (!this.#lifting) this.#keep(chunk, keptFrom, chunk.length);
  }

  #keep(chunk: Uint8Array, from: number, to: number): void {
    if (to <= from) return;
    // A copy, so that the chunk itself can go.
    this.rest.push(Uint8Array.from(chunk.subarray(from, to)));
    this.restBytes += to - from;
  }

  /** Index of the closing quote, which stays in the rest; the chunk's length while there is none. */
  #lift(chunk: Uint8Array, from: number, at: number): number {
    const lifting = this.#lifting as Lifted;
    let index = from;
    while (index < chunk.length) {
      if (this.#escape) {
        this.#escape = false;
        index += 1;
        continue;
      }
      const quote = chunk.indexOf(QUOTE, index);
      const end = quote < 0 ? chunk.length : quote;
      const backslash = chunk.subarray(index, end).indexOf(BACKSLASH);
      if (backslash >= 0) {
        lifting.escaped = true;
        this.#escape = true;
        index += backslash + 1;
      } else if (quote < 0) index = end;
      else {
        this.lifted.set(this.#photo, { ...lifting, to: at + quote });
        this.#lifting = null;
        // The next pass sees this quote as a string's end.
        this.#inString = true;
        this.#word = [];
        return quote;
      }
    }
    return index;
  }

  #string(chunk: Uint8Array, from: number): number {
    for (let index = from; index < chunk.length; index++) {
      const byte = chunk[index] as number;
      if (this.#escape) this.#escape = false;
      else if (byte === BACKSLASH) this.#escape = true;
      else if (byte === QUOTE) {
        this.#inString = false;
        return index + 1;
      }
      if (this.#word.length <= LONGEST_KEY) this.#word.push(byte);
    }
    return chunk.length;
  }

  #structure(byte: number): void {
    if (byte === OPEN || byte === OPEN_LIST) {
      this.#depth += 1;
      if (this.#depth <= PHOTO_DEPTH) {
        this.#kinds[this.#depth] = byte;
        this.#keys[this.#depth] = '';
      }
      if (this.#depth === PHOTO_DEPTH - 1 && this.#inPhotos()) {
        this.#photo = 0;
        this.lifted.clear();
      }
    } else if (byte === CLOSE || byte === CLOSE_LIST) this.#depth -= 1;
    else if (byte === COLON && this.#depth <= PHOTO_DEPTH) this.#keys[this.#depth] = String.fromCharCode(...this.#word);
    else if (byte === COMMA) {
      if (this.#depth === PHOTO_DEPTH - 1 && this.#inPhotos()) this.#photo += 1;
      if (this.#depth <= PHOTO_DEPTH) this.#keys[this.#depth] = '';
    }
  }

  #inPhotos(): boolean {
    return this.#kinds[1] === OPEN && this.#keys[1] === 'photos' && this.#kinds[2] === OPEN_LIST;
  }

  #atPhotoData(): boolean {
    return (
      this.#depth === PHOTO_DEPTH && this.#inPhotos() && this.#kinds[3] === OPEN && this.#keys[PHOTO_DEPTH] === 'data'
    );
  }
}
