import { fontFaces } from '../../../../report/publish/html/style.ts';
import { pageFonts } from './pageFonts.ts';

/**
 * A card as PNG, drawn by the browser at the size that its SVG states, with the page's fonts inside: for when the bench computer is
 * away. What has no ground stays transparent.
 */
export async function pagePng(svg: string): Promise<Blob> {
  const faces = fontFaces(await pageFonts('card'));
  const opened = svg.indexOf('>') + 1;
  const whole = `${svg.slice(0, opened)}<style>${faces}</style>${svg.slice(opened)}`;
  const address = URL.createObjectURL(new Blob([whole], { type: 'image/svg+xml' }));
  try {
    const image = new Image();
    image.src = address;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = image.naturalWidth;
    canvas.height = image.naturalHeight;
    canvas.getContext('2d')!.drawImage(image, 0, 0);
    return await new Promise((settle, refuse) => {
      canvas.toBlob((blob) => {
        if (blob === null) refuse(new Error('This browser cannot draw a picture of that size; save the SVG.'));
        else settle(blob);
      }, 'image/png');
    });
  } finally {
    URL.revokeObjectURL(address);
  }
}
