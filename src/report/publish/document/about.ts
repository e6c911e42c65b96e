/** The sections that let a reader judge and repeat the work: methods, tools, conditions, disclosure, cautions, corrections, replies. */
import type { Findings } from '../../../findings/schema.ts';
import type { Correction } from '../../../trial/corrections.ts';
import type { Reply, SealedPart, Trial } from '../../../trial/trial.ts';
import { ZERO_CELSIUS } from '../../../units/dimension.ts';
import { typedText } from '../../../units/typedText.ts';
import { limitSource, limitWords } from '../../words/limitWords.ts';
import { type ChangedSince, MOVED_WITH_IT, ownAndMoved } from '../changedSince.ts';
import { type Block, paragraphs, type Section } from './blocks.ts';
import { boughtText } from './cables.ts';

/** How each part of the findings is come by, in a sentence or two. */
export function methodTexts({ flex, jacket, current, decide }: Findings): string[] {
  return [
    'The metal’s area is found from mass per length, resistance per length, strand count and strand diameter together. All readings of a cable are weighed at once by how well each tool is known, for every metal that it may be; tools that several cables share are counted as one error, not many.',
    'An interval holds the true value 95 times in 100. It counts the limits of the tools, the scatter of repeats, the temperature, the lay of the strands and the constants of the metal. A claim is said to be met from a chance of 97.5 % on and to fall short up to 2.5 %; between them it is not settled.',
    flex?.cables.some((c) => c.bending_stiffness)
      ? 'Stiffness is found from how far a clamped piece hangs by its own weight, turned over to take out its set, or from a push in the middle of a span.'
      : '',
    flex?.judged
      ? 'By hand, two pieces are bent at a time and the easier one is named; ties are allowed, and the order comes from all pairs together.'
      : '',
    jacket
      ? 'The jacket’s wall is read round a cut face. Endurance counts until a piece fails; pieces that came through count as lasting at least so long.'
      : '',
    current?.cables.some((c) => c.carrying)
      ? 'What a cable carries is computed from its resistance, its section and the heat that still air takes from it, set by the trial’s own heating test where there is one.'
      : '',
    decide
      ? 'The standing weighs fixed scales, drawn jointly with every doubt of the measurements; cables between which no clean cut of 95 % can be made share their places.'
      : '',
  ].filter((text) => text !== '');
}

export function methodsSection(findings: Findings): Section {
  const { draws_sentence: drawn } = findings.engine;
  return { id: 'methods', title: 'How it was measured', blocks: paragraphs(...methodTexts(findings), drawn) };
}

export function toolsSection(trial: Trial): Section[] {
  if (trial.instruments.length === 0) return [];
  const calibrated = trial.instruments.some(({ row }) => (row.calibrated_on ?? '').trim() !== '');
  const rows = trial.instruments.map((tool) => {
    const cell = (name: string) => (tool.row[name] ?? '').trim();
    return [
      tool.kind || tool.instrument,
      typedText(cell('resolution'), cell('unit')),
      limitWords(tool.limit, cell('unit')) || 'none',
      limitSource(tool.limit),
      ...(calibrated ? [cell('calibrated_on')] : []),
    ];
  });
  const checks = trial.checks.map(({ instrument, row }) => {
    const known = typedText(row.known_value ?? '', row.unit ?? '');
    const read = typedText(row.read_value ?? '', row.unit ?? '');
    return `${instrument}, against ${row.against || 'something known'}${known === '' ? '' : ` (${known})`}: read ${read}.`;
  });
  return [
    {
      id: 'tools',
      title: 'Tools and their limits of error',
      blocks: [
        {
          kind: 'table',
          caption: 'A limit of error is the most that a tool may be off; it is taken as even within.',
          head: ['Tool', 'step', 'limit of error', 'limit', ...(calibrated ? ['calibrated on'] : [])],
          sides: ['left', 'right', 'right', 'left', ...(calibrated ? (['left'] as const) : [])],
          rows,
        },
        ...(checks.length > 0 ? [{ kind: 'list', items: checks } as const] : []),
      ],
    },
  ];
}

function temperatureText(trial: Trial): string {
  const taken = trial.readings.flatMap((r) =>
    r.standing === 'counted' && r.temperature !== null ? [r.temperature] : [],
  );
  if (taken.length === 0) return 'No temperature was noted.';
  const [low, high] = [Math.min(...taken), Math.max(...taken)].map((k) => (k - ZERO_CELSIUS).toFixed(1));
  return low === high ? `All at ${low} °C.` : `Between ${low} and ${high} °C.`;
}

function countedText({ readings }: Trial): string {
  const counted = readings.filter(({ standing }) => standing === 'counted').length;
  const aside = readings.length - counted;
  const count = counted === 1 ? '1 reading counts' : `${counted} readings count`;
  if (aside === 0) return `${count}; none was struck out or replaced.`;
  return `${count}; ${aside} ${aside === 1 ? 'was struck out or replaced, and stays' : 'were struck out or replaced, and stay'} on record.`;
}

export function conditionsSection(trial: Trial): Section {
  const { place, openedOn, purpose, blinding } = trial;
  const hidden = blinding.revealed
    ? `Names were hidden behind codes${blinding.how === '' ? '' : ` (${blinding.how})`} until ${blinding.revealedAt ?? 'the reveal'}.`
    : 'Names were not hidden from those who measured.';
  return {
    id: 'conditions',
    title: 'Conditions',
    blocks: paragraphs(
      purpose && `The question: ${purpose}`,
      [place === '' ? '' : `Measured at ${place}.`, openedOn === null ? '' : `Begun on ${openedOn}.`].join(' ').trim(),
      temperatureText(trial),
      hidden,
      countedText(trial),
    ),
  };
}

export function disclosureSection(trial: Trial): Section {
  const rows = trial.cables
    .filter(({ role }) => role !== 'control')
    .map((cable) => `${cable.name}: ${boughtText(cable) || 'how it was come by was not noted.'}`);
  return {
    id: 'disclosure',
    title: 'Disclosure',
    blocks: [
      ...paragraphs(trial.disclosure || 'Nothing was stated about interests.'),
      ...(rows.length > 0 ? [{ kind: 'list', items: rows } as const] : []),
      ...paragraphs(
        'Findings speak of these pieces. Another lot of the same cable may be different; one purchase cannot tell, and nothing is said here of anybody’s intent.',
      ),
    ],
  };
}

export function cautionsSection(findings: Findings): Section {
  const list = [
    ...findings.warnings.map(({ text, cable }) => {
      const name = findings.cables.find((c) => c.cable === cable)?.name;
      return name && !text.includes(name) ? `${name}: ${text}` : text;
    }),
  ];
  const blocks: Block[] = [
    ...paragraphs(
      'What a cable may carry in a given place is decided by the rule that the reader works under. Fuse at the source; terminals and joints were not judged here.',
    ),
    ...(list.length > 0 ? [{ kind: 'list', items: [...new Set(list)] } as const] : []),
  ];
  return { id: 'cautions', title: 'To know', blocks };
}

const day = (at: string | null): string => (at === null ? '' : at.slice(0, 10));

/** What a correction concerns first; then what moved only because all cables are read with the same tools. */
function changedBlocks({ changes }: ChangedSince): Block[] {
  const { own, moved } = ownAndMoved(changes);
  if (changes.length === 0) return paragraphs('Nothing that was sealed would read otherwise today.');
  const list = (items: string[]): Block[] => (items.length > 0 ? [{ kind: 'list', items }] : []);
  return [
    ...list(own.map(({ name, text, at }) => `${day(at)}: ${name}: ${text}`)),
    ...paragraphs(own.length > 0 && moved.length > 0 ? MOVED_WITH_IT : null),
    ...list(moved.map(({ name, text }) => `${name}: ${text}`)),
  ];
}

export function correctionsSection(
  corrections: readonly Correction[],
  changed: ChangedSince | null,
  part: SealedPart | null,
): Section[] {
  const dated = (changed?.corrections ?? corrections).map(({ at, text }) => `${day(at)}: ${text}`);
  const blocks: Block[] = [];
  if (changed && part) {
    blocks.push({ kind: 'heading', text: `Changed since part ${part.part}` }, ...changedBlocks(changed));
    if (dated.length > 0) blocks.push({ kind: 'heading', text: 'Put right since' });
  }
  if (dated.length > 0) blocks.push({ kind: 'list', items: dated });
  return blocks.length > 0 ? [{ id: 'corrections', title: 'Corrections', blocks }] : [];
}

export function repliesSection(replies: readonly Reply[], names: ReadonlyMap<string, string>): Section[] {
  if (replies.length === 0) return [];
  const blocks = replies.flatMap((reply): Block[] => {
    const asked = [
      reply.askedOn === null ? '' : `Asked on ${reply.askedOn}.`,
      reply.deadline === '' ? '' : `A reply was waited for until ${reply.deadline}.`,
      reply.receivedOn === null ? '' : `Answered on ${reply.receivedOn}.`,
      reply.noReply && reply.text === '' ? 'No reply came.' : '',
    ];
    return [
      { kind: 'heading', text: names.get(reply.cable) ?? reply.cable },
      ...paragraphs(asked.filter((text) => text !== '').join(' ')),
      ...(reply.text === '' ? [] : [{ kind: 'quote', text: reply.text, by: reply.by || 'the maker' } as const]),
      ...paragraphs(reply.answer),
    ];
  });
  return [{ id: 'replies', title: 'What the makers say', blocks }];
}

export function checkSection(findings: Findings, packageName: string, licence: string): Section {
  const { content, version, seed, draws, level } = findings.engine;
  return {
    id: 'check',
    title: 'Check it yourself',
    blocks: [
      ...paragraphs(
        'Every reading, tool, limit, strike and correction lies in the data package as plain tables that any spreadsheet opens.',
        `The command “cupel verify ${packageName}” computes it all again: the same digits, or the first that differs.`,
      ),
      {
        kind: 'table',
        caption: 'What the figures were computed from.',
        head: ['', ''],
        sides: ['left', 'left'],
        rows: [
          ['SHA-256 of the rows', content],
          ['version', version],
          ['random draws', `${draws}, from ${seed}`],
          ['intervals', `${Number((100 * level).toFixed(2))} %`],
          ['licence', licence],
        ],
      },
    ],
  };
}
