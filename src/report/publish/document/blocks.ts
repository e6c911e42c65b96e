/** A report as content, before it is set: rendered once as HTML and once for print. Every text may hold anything that a person typed. */

/** One cell: plain text, or a figure in two strengths. */
export type Cell = string | { value: string; after: string };

export type Block =
  | { kind: 'paragraph'; text: string; quiet?: boolean }
  | { kind: 'heading'; text: string }
  | { kind: 'list'; items: readonly string[] }
  | { kind: 'picture'; svg: string; width: number; height: number; description: string; caption: string }
  | {
      kind: 'table';
      caption: string;
      head: readonly string[];
      /** Side of each column. */
      sides: readonly ('left' | 'right')[];
      rows: readonly (readonly Cell[])[];
    }
  /** What somebody else said, word for word. */
  | { kind: 'quote'; text: string; by: string }
  /** Empty lines to write on by hand. */
  | { kind: 'writing'; lines: number; label: string };

export interface Section {
  /** Names it in links; letters, digits and hyphens. */
  id: string;
  title: string;
  blocks: readonly Block[];
}

export interface ReportDocument {
  title: string;
  /** The findings in a paragraph. */
  lead: string;
  /** Part, places, when sealed; empty for a draft. */
  partLine: string;
  sections: readonly Section[];
  /** Who, and the beginning of the data's hash; with the licence on every page. */
  foot: string;
  licence: Licence;
  /** Set small and close, for a document that is meant for few pages. */
  tight?: boolean;
  /** Everything a search engine may know of the data. */
  dataset: DatasetFacts;
}

export interface Licence {
  name: string;
  address: string;
}

/** Taken where the trial names no other. Creative Commons Attribution 4.0 International. */
export const CC_BY: Licence = { name: 'CC BY 4.0', address: 'https://creativecommons.org/licenses/by/4.0/' };

export interface DatasetFacts {
  name: string;
  description: string;
  creator: string;
  content: string;
  version: string;
  published: string | null;
  measured: readonly { name: string; unit: string }[];
  techniques: readonly string[];
}

export const cellText = (cell: Cell): string => (typeof cell === 'string' ? cell : `${cell.value}${cell.after}`);

/** No paragraph for nothing. */
export const paragraphs = (...texts: readonly (string | null | undefined)[]): Block[] =>
  texts.flatMap((text) => (text ? [{ kind: 'paragraph', text } as const] : []));
