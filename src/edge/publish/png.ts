import { Resvg } from '@resvg/resvg-js';
import { fontFiles, needsSystemFonts } from './fonts.ts';

/** A card as PNG, at the size that its SVG states; what has no ground stays transparent. */
export function cardPng(svg: string): Uint8Array {
  const drawn = new Resvg(svg, {
    font: {
      fontFiles: fontFiles(),
      loadSystemFonts: needsSystemFonts(svg),
      defaultFontFamily: 'Source Sans 3',
      sansSerifFamily: 'Source Sans 3',
      serifFamily: 'Besley',
    },
  });
  return drawn.render().asPng();
}
