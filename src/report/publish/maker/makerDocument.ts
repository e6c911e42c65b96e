import { conditionsSection, repliesSection, toolsSection } from '../document/about.ts';
import { type Block, CC_BY, paragraphs, type ReportDocument, type Section } from '../document/blocks.ts';
import { oneCableBlocks } from '../document/cables.ts';
import { shortHash } from '../document/reportDocument.ts';
import { objectionsTo } from './objections.ts';
import { type OfOneCable, ofOneCable } from './ofOneCable.ts';
import { enduranceRows, readingRows } from './readingRows.ts';

/** A cable that a draft was asked for and that is not there. */
export class NoSuchCable extends Error {}

function rawSection({ trial }: OfOneCable): Section {
  const rows = [...readingRows(trial), ...enduranceRows(trial)];
  const blocks: Block[] =
    rows.length === 0
      ? paragraphs('Nothing was read of it.')
      : [
          {
            kind: 'table',
            caption:
              'Every reading as it was typed, those that do not count included; repeats of one thing stand on one line.',
            head: ['Piece', 'What', 'Read', 'How'],
            sides: ['left', 'left', 'left', 'left'],
            rows,
          },
          ...paragraphs(
            trial.currents.length > 0
              ? `The ${trial.currents.length} rows of its heating test are in the data package.`
              : null,
          ),
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

/** Lines to write a reply on, where none has come yet. */
const REPLY_LINES = 4;

function replySection({ trial }: OfOneCable, names: ReadonlyMap<string, string>): Section[] {
  const came = trial.replies.some(({ text }) => text !== '');
  if (came) return repliesSection(trial.replies, names);
  const asked = repliesSection(trial.replies, names).flatMap(({ blocks }) => blocks.slice(1));
  const label =
    'Your reply, with name and day. It is printed word for word, and dated, with everything published of this piece.';
  return [
    {
      id: 'replies',
      title: 'Your reply',
      blocks: [...asked, { kind: 'writing', lines: REPLY_LINES, label }],
    },
  ];
}

/** Only tools that this cable's readings name. */
function usedTools({ trial }: OfOneCable): Section[] {
  const used = new Set(trial.readings.map(({ instrument }) => instrument));
  return toolsSection({
    ...trial,
    instruments: trial.instruments.filter(({ instrument }) => used.has(instrument)),
    checks: trial.checks.filter(({ instrument }) => used.has(instrument)),
  });
}

/**
 * A dated draft for the maker of one cable: everything that led to its findings, what would change them, and what is usually said
 * against such findings with this trial's own answers. Shows nothing of any other cable. Two pages where a cable was read about
 * as often as usual; more readings run on.
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
    rows: objectionsTo(of, { toolErrorsAbove: true }).map(({ said, answer }) => [said, answer]),
  };
  const names = new Map([[cable, one.name]]);
  return {
    title: `${one.name}: what was found, and what it rests on`,
    lead: `${one.sentence} These findings speak of this piece. A reply is printed, word for word, with everything that is published of it.`,
    partLine: `Draft of ${day}, not published`,
    sections: [
      { id: 'cables', title: 'What was found', blocks: oneCableBlocks(one, of.trial) },
      changeSection(of),
      rawSection(of),
      ...usedTools(of),
      conditionsSection(of.trial),
      { id: 'answers', title: 'What may be said against it', blocks: [answers] },
      ...replySection(of, names),
    ],
    foot: [trial.place, `draft of ${day}`, `data ${shortHash(findings.engine.content)}`]
      .filter((text) => text !== '')
      .join(' · '),
    licence: CC_BY,
    tight: true,
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
