/** What a label says the conductor is made of, and which parts of that no scale or meter can check. */
export interface MetalClaim {
  metal: 'copper' | 'tinned copper' | 'copper-clad aluminium' | 'aluminium' | 'unsaid' | 'unreadable';
  /** Parts of the claim outside these tools: `oxygen-free`, `99.9 %`, `pure`, `virgin`. */
  notTestable: string[];
  /** How the text was understood, as a phrase for people. */
  readAs: string;
}

const CLAD =
  /\bccaw?\b|\bclad\b|\bcopper[- ](?:coated|plated|covered|bonded|jacketed)\b|\b(?:coated|plated|covered) alumini?um\b/;
/** `not CCA`, `no aluminium`, `CCA-free`: said to deny it. */
const DENIED =
  /\b(?:not?|non|never|without|zero)[- ]+(?:ccaw?\b|copper[- ]clad(?:[- ]alumini?um)?|alumini?um\b)|\b(?:ccaw?|alumini?um)[- ]free\b/g;
const ALUMINIUM = /\balumini?um\b|\balu\b|\bal\b/;
const STEEL = /\bsteel\b|\bccs\b|\biron\b/;
const TINNED = /\btinned\b|\btin[- ](?:plated|coated)\b|\btofc\b/;
const OXYGEN_FREE = /\bt?ofc\b|\bofhc\b|\bofe\b|\boxygen[- ]free\b|\bcu[- ]of\b/;
const COPPER = /\bcopper\b|\bcu\b|\betp\b/;
/** `99.9 %`, `99,99%`, `99.9 pure`; 100 % is left out: it says that all of it is copper, which is what the readings judge. */
const PURITY = /\b(9\d(?:[.,]\d+)?) ?(?:%|percent\b|pure\b)/;
const PURE_WORDS: readonly (readonly [RegExp, string])[] = [
  [/\bpure\b|\bpurity\b/, 'pure'],
  [/\bvirgin\b/, 'virgin'],
  [/\bsilver\b(?! ?-?tinned)/, 'silver plating'],
];

function untestableParts(text: string): string[] {
  const purity = PURITY.exec(text);
  return [
    ...(OXYGEN_FREE.test(text) ? ['oxygen-free'] : []),
    ...(purity ? [`${purity[1]!.replace(',', '.')} %`] : []),
    ...PURE_WORDS.filter(([pattern]) => pattern.test(text)).map(([, name]) => name),
  ];
}

function metalOf(text: string, saysUntestable: boolean): MetalClaim['metal'] {
  const isCopper = COPPER.test(text) || OXYGEN_FREE.test(text);
  if (STEEL.test(text)) return 'unreadable';
  if (CLAD.test(text)) return 'copper-clad aluminium';
  if (ALUMINIUM.test(text)) return isCopper ? 'unreadable' : 'aluminium';
  if (TINNED.test(text)) return 'tinned copper';
  return isCopper || saysUntestable ? 'copper' : 'unreadable';
}

/**
 * Reads a claimed metal, verbatim from label or listing: `OFC`, `tinned OFC`, `99.9 % pure`, `CCA`, `not CCA, all copper`.
 *
 * `OFC` is two claims: copper, which the readings judge, and oxygen-free, which they cannot. Purity words (`pure`, `virgin`,
 * `99.9 %`) count as saying copper. Nothing said is `unsaid`; what names no metal here, or two at once, is `unreadable`.
 *
 * @example readMetalText('tinned OFC') // metal 'tinned copper', notTestable ['oxygen-free']
 */
export function readMetalText(text: string): MetalClaim {
  const plain = text
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[‐-–−]/g, '-')
    .replace(/\s+/g, ' ')
    .trim();
  if (plain === '') return { metal: 'unsaid', notTestable: [], readAs: 'the label does not say which metal' };
  const affirmed = plain.replace(DENIED, '');
  const untestable = untestableParts(affirmed);
  const metal = metalOf(affirmed, untestable.length > 0);
  if (metal === 'unreadable') {
    return { metal, notTestable: [], readAs: `"${text.trim()}" does not name one metal that is known here` };
  }
  const rest = untestable.length > 0 ? `; not testable with these tools: ${untestable.join(', ')}` : '';
  return { metal, notTestable: untestable, readAs: `${metal}${rest}` };
}
