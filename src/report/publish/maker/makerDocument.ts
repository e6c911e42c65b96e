import { pieceSign, quantityHead } from '../../../trial/plainWords.ts';
import { STANDING_WORDS } from '../../../trial/standing.ts';
import type { Reading, Trial } from '../../../trial/trial.ts';
import { typedText } from '../../../units/typedText.ts';
import { conditionsSection, repliesSection, toolsSection } from '../document/about.ts';
import { type Block, CC_BY, paragraphs, type ReportDocument, type Section } from '../document/blocks.ts';
import { cablesSection } from '../document/cables.ts';
import { shortHash } from '../document/reportDocument.ts';
import { objectionsTo } from './objections.ts';
import { type OfOneCable, ofOneCable } from './ofOneCable.ts';

/** A cable that a draft was asked for and that is not there. */
export class NoSuchCable extends Error {}

const joined = (value = '', unit = ''): string => (value === '' ? '' : typedText(value, unit));

function readingRow(trial: Trial, { specimen, quantity, row, standing, why }: Reading): string[] {
  const at = [
    row.instrument ?? '',
    joined(row.at_length, row.at_length_unit) && `over ${joined(row.at_length, row.at_length_unit)}`,
    joined(row.temperature, row.temperature_unit) && `at ${joined(row.temperature, row.temperature_unit)}`,
    row.position ?? '',
  ].filter((text) => text !== '');
  const aside = standing === 'counted' ? '' : [STANDING_WORDS[standing], why].filter((text) => text !== '').join(': ');
  return [pieceSign(trial, specimen), quantityHead(quantity), joined(row.value, row.unit), at.join(', '), aside];
}

function rawSection({ trial }: OfOneCable): Section {
  const rows = trial.readings.map((reading) => readingRow(trial, reading));
  const blocks: Block[] =
    rows.length === 0
      ? paragraphs('Nothing was read of it.')
      : [
          {
            kind: 'table',
            caption: 'Every reading as it was typed, those that do not count included.',
            head: ['Piece', 'What', 'Read', 'How', 'Does not count'],
            sides: ['left', 'left', 'right', 'left', 'left'],
            rows,
          },
        ];
  return { id: 'readings', title: 'Every reading', blocks };
}

function changeSection({ findings }: OfOneCable): Section {
  const [cable] = findings.cables;
  const wrong = cable?.tool_errors.map(({ text }) => text) ?? [];
  const next = cable?.next_reading?.text ?? '';
  const blocks: Block[] = [
    ...(wrong.length > 0
      ? [{ kind: 'list', items: wrong } as const]
      : paragraphs('No outcome here is settled, so more readings can still decide it either way.')),
    ...paragraphs(next && `One more measurement: ${next}`),
    ...paragraphs(
      'A reading by somebody else of the same piece, or of another length from the same lot, is welcome and will be printed beside ours.',
    ),
  ];
  return { id: 'change', title: 'What would change the finding', blocks };
}

/**
 * A dated draft for the maker of one cable: everything that led to its findings, what would change them, and what is usually said
 * against such findings with this trial's own answers. Shows nothing of any other cable.
 *
 * @param day ISO 8601 day on which the draft is made
 * @throws NoSuchCable
 */
export function makerDocument({ trial, findings }: OfOneCable, cable: string, day: string): ReportDocument {
  const of = ofOneCable(trial, findings, cable);
  const [one] = of.findings.cables;
  if (!one) throw new NoSuchCable(`There is no cable "${cable}".`);
  const answers: Block = {
    kind: 'table',
    caption: 'Answered from the figures of this trial.',
    head: ['What may be said', 'What the trial shows'],
    sides: ['left', 'left'],
    rows: objectionsTo(of).map(({ said, answer }) => [said, answer]),
  };
  const names = new Map([[cable, one.name]]);
  return {
    title: `${one.name}: what was found, and what it rests on`,
    lead: `${one.sentence} These findings speak of this piece. A reply is printed, word for word, with everything that is published of it.`,
    partLine: `Draft of ${day}, not published`,
    sections: [
      cablesSection(of.findings, of.trial, {}),
      changeSection(of),
      rawSection(of),
      ...toolsSection(of.trial),
      conditionsSection(of.trial),
      { id: 'answers', title: 'What may be said against it', blocks: [answers] },
      ...repliesSection(of.trial.replies, names),
    ],
    foot: [trial.place, `draft of ${day}`, `data ${shortHash(findings.engine.content)}`]
      .filter((text) => text !== '')
      .join(' · '),
    licence: CC_BY,
    dataset: {
      name: one.name,
      description: one.sentence,
      creator: trial.place || trial.trial,
      content: findings.engine.content,
      version: findings.engine.version,
      published: null,
      measured: [],
      techniques: [],
    },
  };
}
