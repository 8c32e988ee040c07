import { browserTools, type PictureTools } from './canvas.ts';
import { brightnessAt, fitWithin, type Grey, greyOf, halved, type Pixels, sharpness } from './measures.ts';

/**
 * What a look at the pixels alone can say against a picture, the gravest only.
 * empty: all of it has the same brightness (a finger or a bag over the lens, the sun). dark: three quarters of it are darker than
 * anybody makes out on a screen by day. blurred: edges are smeared over more than about a two-hundredth of the picture.
 * It does not notice: a slight blur; a sharp background behind a blurred thing, or a thing too small to matter in the whole; blur on
 * a surface almost without contrast; shake in a dark or grainy picture; glare; a dark thing in good light is taken for a dark
 * picture; and whether it shows what it should.
 */
export type PictureDoubt = 'empty' | 'dark' | 'blurred';

/** Longest side of the copy that is looked at, and of the smallest one made of it. */
const COPY = 512;
const SMALLEST = 128;
/** Steps of brightness between the darkest and the brightest hundredth. Our own trials, no source. */
const EMPTY_WITHIN = 5;
/** Brightness of the three-quarter point: about three and a half stops under a usual exposure. Our own trials, no source. */
const DARK_BELOW = 60;
/** A step smeared by a Gaussian of 1.4 pixels. Our own trials, no source. */
const BLURRED_BELOW = 0.25;

export function doubtAbout(pixels: Pixels): PictureDoubt | null {
  const grey = greyOf(pixels);
  if (grey.values.length === 0) return null;
  if (brightnessAt(grey, 0.75) < DARK_BELOW) return 'dark';
  if (brightnessAt(grey, 0.99) - brightnessAt(grey, 0.01) < EMPTY_WITHIN) return 'empty';
  return isBlurred(grey) ? 'blurred' : null;
}

/** Smaller copies too: in the first, what is smeared widely has no edges left to tell it by. */
function isBlurred(grey: Grey): boolean {
  for (let copy = grey; Math.max(copy.width, copy.height) >= SMALLEST; copy = halved(copy)) {
    const { whole, across, down } = sharpness(copy);
    if ([whole, across, down].some((value) => value !== null && value < BLURRED_BELOW)) return true;
  }
  return false;
}

/** Looks at a stored picture; null where nothing speaks against it, and where this browser cannot look. Never throws. */
export async function lookAt(picture: Blob, tools: PictureTools = browserTools): Promise<PictureDoubt | null> {
  try {
    const decoded = await tools.decode(picture);
    try {
      if (!tools.isHonest()) return null;
      const { width, height } = fitWithin(decoded.width, decoded.height, COPY);
      return doubtAbout(tools.draw(decoded, width, height).pixels());
    } finally {
      decoded.close();
    }
  } catch {
    return null;
  }
}
