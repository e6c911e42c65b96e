/** How the invented jackets really last. Like `truths.ts`, these figures are in no file of the package. */
export interface AbuseTruth {
  /** Median strokes of the needle for each millimetre of wall. */
  scrape: number;
  /** Median strokes of the paper for each millimetre of wall. */
  sandpaper: number;
}

export const ABUSE_TRUTHS: Readonly<Record<string, AbuseTruth>> = {
  brackenfell: { scrape: 120, sandpaper: 38 },
  'nine-elms': { scrape: 250, sandpaper: 52 },
  tollgate: { scrape: 45, sandpaper: 19 },
  'harrow-sedge': { scrape: 125, sandpaper: 36 },
  // A thick jacket of ordinary stuff.
  quill: { scrape: 112, sandpaper: 37 },
  saltmarsh: { scrape: 78, sandpaper: 30 },
};

/** Weibull shape of every one: pieces of one cable scatter by about a third. */
export const ABUSE_SHAPE = 3.5;
