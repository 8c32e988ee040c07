import type { Pixels } from './measures.ts';

/** A decoded picture, upright. width, height: pixels. close gives its memory back. */
export interface Decoded {
  width: number;
  height: number;
  source: CanvasImageSource;
  close(): void;
}

/** A picture drawn at a size. */
export interface Drawn {
  pixels(): Pixels;
  /** quality: 0..1. Null when the browser cannot encode it. */
  jpeg(quality: number): Promise<Blob | null>;
}

/** What taking a picture needs from the browser. */
export interface PictureTools {
  /** Throws when the browser cannot decode the file. */
  decode(file: Blob): Promise<Decoded>;
  draw(decoded: Decoded, width: number, height: number): Drawn;
  /** Whether a canvas gives back what was drawn on it. */
  isHonest(): boolean;
}

export const browserTools: PictureTools = { decode, draw, isHonest };

async function decode(file: Blob): Promise<Decoded> {
  try {
    // The orientation is honoured here, once; what is drawn afterwards is upright and has no Exif to say otherwise.
    const bitmap = await createImageBitmap(file, { imageOrientation: 'from-image' });
    return { width: bitmap.width, height: bitmap.height, source: bitmap, close: () => bitmap.close() };
  } catch (error) {
    if (typeof document === 'undefined') throw error;
    return await decodeByElement(file);
  }
}

/** Older WebKit knows no 'from-image' in createImageBitmap, but its image element turns a picture upright by itself. */
async function decodeByElement(file: Blob): Promise<Decoded> {
  const image = new Image();
  const url = URL.createObjectURL(file);
  try {
    image.src = url;
    await image.decode();
  } catch (error) {
    URL.revokeObjectURL(url);
    throw error;
  }
  const close = (): void => URL.revokeObjectURL(url);
  return { width: image.naturalWidth, height: image.naturalHeight, source: image, close };
}

function draw(decoded: Decoded, width: number, height: number): Drawn {
  const { canvas, context } = surface(width, height);
  // JPEG has no transparency; without this, clear parts turn black.
  context.fillStyle = '#fff';
  context.fillRect(0, 0, width, height);
  context.imageSmoothingQuality = 'high';
  context.drawImage(decoded.source, 0, 0, width, height);
  return {
    pixels: () => context.getImageData(0, 0, width, height),
    jpeg: (quality) => encode(canvas, quality),
  };
}

interface Surface {
  canvas: OffscreenCanvas | HTMLCanvasElement;
  context: OffscreenCanvasRenderingContext2D | CanvasRenderingContext2D;
}

function surface(width: number, height: number): Surface {
  if (typeof OffscreenCanvas !== 'undefined') {
    const canvas = new OffscreenCanvas(width, height);
    // Some WebKit versions have OffscreenCanvas without a 2d context.
    const context = canvas.getContext('2d');
    if (context) return { canvas, context };
  }
  const canvas = Object.assign(document.createElement('canvas'), { width, height });
  const context = canvas.getContext('2d');
  if (!context) throw new Error('no 2d context');
  return { canvas, context };
}

function encode(canvas: Surface['canvas'], quality: number): Promise<Blob | null> {
  const type = 'image/jpeg';
  if ('convertToBlob' in canvas) return canvas.convertToBlob({ type, quality });
  return new Promise((resolve) => canvas.toBlob(resolve, type, quality));
}

/**
 * Browsers set to resist fingerprinting give back white or noise instead of what was drawn, without an error: the
 * picture would be stored as a blank sheet.
 */
function isHonest(): boolean {
  const { context } = surface(2, 2);
  context.fillStyle = 'rgb(20, 180, 90)';
  context.fillRect(0, 0, 2, 2);
  const [red = 0, green = 0, blue = 0] = context.getImageData(0, 0, 1, 1).data;
  return Math.abs(red - 20) < 12 && Math.abs(green - 180) < 12 && Math.abs(blue - 90) < 12;
}
