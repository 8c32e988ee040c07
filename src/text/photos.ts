import { photos } from './en/photos.ts';
import { inLanguage } from './rooms.ts';

/** The words about pictures and about withdrawing, apart from the rest: few steps need them. */
export function sayPhotos(): typeof photos {
  return inLanguage('photos', photos);
}
