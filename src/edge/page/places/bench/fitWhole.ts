/** Shorter texts fit at any width, and measuring takes time after every key. */
const SURELY_FITS = 5;
/** Smaller than this share of the usual size, a text is scrolled instead; 20 px on a phone. */
const SMALLEST = 0.28;

/** Sets the text of a field smaller where it would not be seen whole; what is longer still shows its beginning. */
export function fitWhole(field: HTMLInputElement): void {
  field.style.setProperty('--fit', '1');
  if (field.value.length <= SURELY_FITS) return;
  const share = field.clientWidth / field.scrollWidth;
  if (share < 1) field.style.setProperty('--fit', String(Math.max(SMALLEST, Math.floor(share * 100) / 100)));
  if (share < SMALLEST && document.activeElement !== field) field.scrollLeft = 0;
}
