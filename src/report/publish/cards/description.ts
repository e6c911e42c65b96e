import type { Findings } from '../../../findings/schema.ts';
import type { Trial } from '../../../trial/trial.ts';
import { limitWords } from '../../words/limitWords.ts';
import { shownCables } from '../document/overview.ts';

export interface DescriptionAsked {
  /** Most characters that the box takes. */
  limit: number;
  /** Parts with their addresses, as the tester gives them. */
  links: readonly { title: string; address: string }[];
}

export interface DescriptionText {
  text: string;
  /** Characters as people count them. */
  length: number;
  /** Lines that did not fit, from the end. */
  leftOut: number;
}

/** Characters in the usual sense: code points. */
export const characters = (text: string): number => [...text].length;

/**
 * The same facts as plain text for a description box: what was found, cable by cable, tools, disclosure, links. What does not fit
 * the limit is left out by whole lines, links kept first of all.
 */
export function descriptionText(findings: Findings, trial: Trial, { limit, links }: DescriptionAsked): DescriptionText {
  const oneLine = (text: string) => text.replace(/\s+/g, ' ').trim();
  const linked = links.map(({ title, address }) => oneLine(`${title}: ${address}`));
  const tools = trial.instruments.map((tool) => {
    const words = limitWords(tool.limit, (tool.row.unit ?? '').trim());
    return `${tool.kind || tool.instrument}${words === '' ? '' : ` ${words}`}`;
  });
  const lines = [
    findings.title || findings.trial,
    findings.sentence,
    ...linked,
    findings.decide?.sentence ?? '',
    findings.flex?.sentence ?? '',
    findings.jacket?.sentence ?? '',
    ...shownCables(findings).map(({ name, sentence }) => `${name}: ${sentence}`),
    trial.disclosure,
    tools.length > 0 ? `Tools: ${tools.join(', ')}.` : '',
    'Findings speak of these pieces. ± reaches the farther end of the interval that holds the true value 95 times in 100.',
  ]
    .map(oneLine)
    .filter((text) => text !== '');
  const kept: string[] = [];
  for (const text of lines) {
    if (characters([...kept, text].join('\n')) > limit) break;
    kept.push(text);
  }
  const text = kept.join('\n');
  return { text, length: characters(text), leftOut: lines.length - kept.length };
}
