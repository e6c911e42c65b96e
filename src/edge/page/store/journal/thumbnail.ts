/** The small version of a photo that lists show, so that a phone that opens a trial need not load every photo whole. */

/** Longest side, pixels: sharp at twice the size at which lists show it. Ours. */
const LONGEST_SIDE = 320;
/** Of 1. Ours: some 15 kB for a photo. */
const QUALITY = 0.75;

/**
 * A photo drawn small, as JPEG; null where this browser cannot draw it, or where that would save nothing. What the camera wrote
 * beside the picture, such as the place, is not in it.
 */
export async function thumbnailOf(photo: Blob): Promise<Uint8Array<ArrayBuffer> | null> {
  try {
    const picture = await createImageBitmap(photo, { imageOrientation: 'from-image' });
    const drawn = await drawnSmall(picture);
    picture.close();
    return drawn !== null && drawn.size < photo.size ? new Uint8Array(await drawn.arrayBuffer()) : null;
  } catch {
    // A kind that this browser does not know: lists then show the photo itself.
    return null;
  }
}

function drawnSmall(picture: ImageBitmap): Promise<Blob | null> {
  const scale = Math.min(1, LONGEST_SIDE / Math.max(picture.width, picture.height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(picture.width * scale));
  canvas.height = Math.max(1, Math.round(picture.height * scale));
  const pen = canvas.getContext('2d');
  if (pen === null) return Promise.resolve(null);
  pen.imageSmoothingQuality = 'high';
  pen.drawImage(picture, 0, 0, canvas.width, canvas.height);
  return new Promise((settle) => canvas.toBlob(settle, 'image/jpeg', QUALITY));
}
