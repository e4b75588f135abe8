import { within } from '../../../core/check.js';

/** How a drawing is to be made into pixels. */
export interface PictureSize {
  /** Width of the picture, 16–8192 px; the height follows. */
  width: number;
}

/**
 * A stand-alone SVG as a PNG of the given width.
 * @throws RangeError for a width out of range.
 * @throws Error where the policy of the page forbids images of the scheme `data:` (`img-src data:` allows them).
 */
export async function raster(file: string, { width }: PictureSize): Promise<Blob> {
  within('width', width, 16, 8192, 'px');
  const image = new Image();
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(file)}`;
  await image.decode().catch(() => {
    throw new Error('The drawing cannot be made into a PNG: the page must allow images of the scheme data: (img-src data:).');
  });
  const canvas = document.createElement('canvas');
  canvas.width = Math.round(width);
  canvas.height = Math.round((width * image.naturalHeight) / image.naturalWidth);
  canvas.getContext('2d')!.drawImage(image, 0, 0, canvas.width, canvas.height);
  const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/png'));
  if (!blob) throw new Error('The browser could not make a PNG of the drawing.');
  return blob;
}
