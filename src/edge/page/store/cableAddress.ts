/** Set in an address before a cable whose name would be taken for something else that can be open there. */
const CABLE = 'cable:';

/** The cable that the part of the address behind `#` names. */
export const cableNamed = (opened: string) => (opened.startsWith(CABLE) ? opened.slice(CABLE.length) : opened);

/** The inverse of `cableNamed`; `taken` tells a text that means something else in that place. */
export const cableText = (cable: string, taken: (text: string) => boolean) =>
  taken(cable) || cable.startsWith(CABLE) ? `${CABLE}${cable}` : cable;
