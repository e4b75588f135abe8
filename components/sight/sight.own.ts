import type { Picture } from '../../core/sight.js';
import { SIDE } from './sight.scenes.js';

/** More pixels than this, or a longer side, are more than a phone can hold in memory. Assumed. */
const MOST_PIXELS = 64e6;
const LONGEST = 16_384;

/** The page's own picture: ready, or why there is none. */
export type OwnPicture =
  | { state: 'missing' | 'loading' | 'broken' | 'foreign' }
  | { state: 'huge'; size: Size; most: number }
  | { state: 'ready'; picture: Picture; size: Size; name: string };

/** px */
interface Size {
  width: number;
  height: number;
}

/** The image in a slot, also inside a `picture`. */
export function imageIn(slot: HTMLSlotElement): HTMLImageElement | null {
  for (const element of slot.assignedElements({ flatten: true })) {
    const image = element.localName === 'img' ? (element as HTMLImageElement) : element.querySelector('img');
    if (image) return image;
  }
  return null;
}

/** What can be said of an image without reading it; null when it can be read. */
export function unreadable(image: HTMLImageElement | null): OwnPicture | null {
  if (!image || (!image.getAttribute('src') && !image.currentSrc)) return { state: 'missing' };
  if (!image.complete) return { state: 'loading' };
  const { naturalWidth: width, naturalHeight: height } = image;
  if (width === 0 || height === 0) return { state: 'broken' };
  return Math.max(width, height) > LONGEST || width * height > MOST_PIXELS ? { state: 'huge', size: { width, height }, most: MOST_PIXELS } : null;
}

/** The pixels of an image, on white, its longer side as long as that of every scene. Nothing leaves the page. */
export async function readImage(image: HTMLImageElement): Promise<OwnPicture> {
  try {
    // So that the page is not held up by the decoding.
    await image.decode();
    const { naturalWidth: width, naturalHeight: height, alt: name } = image;
    return { state: 'ready', picture: pixelsOf(image, width, height), size: { width, height }, name };
  } catch (error) {
    return { state: (error as Error).name === 'SecurityError' ? 'foreign' : 'broken' };
  }
}

function pixelsOf(image: HTMLImageElement, width: number, height: number): Picture {
  const scale = SIDE / Math.max(width, height);
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(width * scale));
  canvas.height = Math.max(1, Math.round(height * scale));
  const context = canvas.getContext('2d', { willReadFrequently: true });
  if (!context) throw new Error('There is no canvas to draw on.');
  context.fillStyle = '#fff';
  context.fillRect(0, 0, canvas.width, canvas.height);
  context.imageSmoothingQuality = 'high';
  context.drawImage(image, 0, 0, canvas.width, canvas.height);
  return context.getImageData(0, 0, canvas.width, canvas.height) as Picture;
}
