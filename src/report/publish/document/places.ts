/** The sections on bending, jacket, current and standing, each only where something is known. */
import type { Findings } from '../../../findings/schema.ts';
import { capital } from '../../../units/capital.ts';
import { UNKNOWN } from '../../figures.ts';
import { paperTheme } from '../../theme.ts';
import { andList } from '../../words/andList.ts';
import { chanceText } from '../../words/chanceWords.ts';
import { bandPlaces, placeChart } from '../pictures/placeChart.ts';
import { type Block, paragraphs, type Section } from './blocks.ts';
import { bareCell, figureCell, intervalCell, percentCell } from './figureCells.ts';
import { TEXT_WIDTH } from './overview.ts';

export function bendSection({ flex }: Findings): Section[] {
  if (flex === null) return [];
  const bent = flex.cables.filter(({ role }) => role !== 'control');
  const blocks: Block[] = [...paragraphs(flex.sentence)];
  if (bent.length > 0)
    blocks.push({
      kind: 'table',
      caption:
        'Bending. Stiffness by the method named; band 1 bends most easily, and cables of one band are not parted.',
      head: ['Cable', 'stiffness, N·m²', 'interval', 'by', 'at °C', 'band', 'tightest coil', 'springs back'],
      sides: ['left', 'right', 'right', 'left', 'right', 'right', 'right', 'right'],
      rows: bent.map((c) => [
        c.name,
        bareCell(c.bending_stiffness),
        intervalCell(c.bending_stiffness),
        c.method ?? UNKNOWN,
        c.temperature_C?.toFixed(0) ?? UNKNOWN,
        c.band?.toString() ?? UNKNOWN,
        figureCell(c.coil_ratio),
        c.spring_back ? percentCell(c.spring_back) : UNKNOWN,
      ]),
    });
  if (flex.judged)
    blocks.push({
      kind: 'table',
      caption: `Judged by hand, two pieces at a time: ${flex.judged.pairs} judgements, ${flex.judged.blinded.every((b) => b === 'open') ? 'judged openly' : `judged by ${flex.judged.blinded.join(', ')}`}.`,
      head: ['Cable', 'band', 'chance of being the easiest', 'cannot be told from'],
      sides: ['left', 'right', 'right', 'left'],
      rows: [...flex.judged.cables]
        .sort((a, b) => b.ability - a.ability)
        .map((c) => [
          c.name,
          c.band?.toString() ?? UNKNOWN,
          c.probability_best === null ? UNKNOWN : chanceText(Math.min(1, c.probability_best)),
          c.cannot_be_told_from.map((id) => nameOf(flex.judged!.cables, id)).join(', ') || UNKNOWN,
        ]),
    });
  const cautions = cautionsOf(bent);
  if (cautions.length > 0) blocks.push({ kind: 'list', items: cautions });
  return [{ id: 'bend', title: 'How they bend', blocks }];
}

/** Each caution once, with the cables that it is about unless it is about all. */
function cautionsOf(bent: readonly { name: string; cautions: readonly string[] }[]): string[] {
  const texts = [...new Set(bent.flatMap(({ cautions }) => cautions))];
  return texts.map((text) => {
    const about = bent.filter(({ cautions }) => cautions.includes(text));
    return about.length === bent.length ? text : `${andList(about.map(({ name }) => name))}: ${text}`;
  });
}

const nameOf = (cables: readonly { cable: string; name: string }[], id: string): string =>
  cables.find(({ cable }) => cable === id)?.name ?? id;

export function jacketSection({ jacket }: Findings): Section[] {
  if (jacket === null) return [];
  const cables = jacket.cables.filter(({ role }) => role !== 'control');
  const blocks: Block[] = [...paragraphs(jacket.sentence)];
  if (cables.length > 0)
    blocks.push({
      kind: 'table',
      caption: 'The jackets: their walls, and where the whole cut face goes.',
      head: [
        'Cable',
        'wall, mean, mm',
        'wall, least, mm',
        'least over greatest',
        'density, g/cm³',
        'metal',
        'air',
        'jacket',
      ],
      sides: ['left', 'right', 'right', 'right', 'right', 'right', 'right', 'right'],
      rows: cables.map((c) => [
        c.name,
        bareCell(c.wall?.mean ?? null),
        bareCell(c.wall?.least ?? null),
        figureCell(c.concentricity),
        bareCell(c.density),
        percentCell(c.shares?.metal ?? null),
        percentCell(c.shares?.air ?? null),
        percentCell(c.shares?.jacket ?? null),
      ]),
    });
  // Where a wall was read, the table says all that its sentence does.
  const said = cables
    .filter(({ sentence, wall }) => sentence !== '' && wall === null)
    .map(({ name, sentence }) => `${name}: ${sentence}`);
  if (said.length > 0) blocks.push({ kind: 'list', items: said });
  for (const test of jacket.endurance)
    blocks.push(
      { kind: 'heading', text: capital(test.test) },
      ...paragraphs(test.sentence),
      { kind: 'list', items: test.cables.map((c) => (c.text.includes(c.name) ? c.text : `${c.name}: ${c.text}`)) },
      ...paragraphs(test.small_samples),
    );
  if (jacket.exposures.length > 0)
    blocks.push(
      { kind: 'heading', text: 'Fluids and heat' },
      { kind: 'list', items: jacket.exposures.map(({ text }) => text) },
    );
  return [{ id: 'jacket', title: 'The jacket', blocks }];
}

export function ampsSection({ current }: Findings): Section[] {
  const cables =
    current?.cables.filter((c) => c.role !== 'control' && (c.carrying || c.heating_tests.length > 0)) ?? [];
  if (current === null || cables.length === 0) return [];
  const tests = current.cables.flatMap((c) =>
    c.heating_tests.flatMap(({ text }) => (text === '' ? [] : [`${c.name}: ${text}`])),
  );
  return [
    {
      id: 'amps',
      title: 'What they carry',
      blocks: [
        ...paragraphs(current.sentence, current.estimate),
        {
          kind: 'table',
          caption: 'Current at which the conductor reaches the rating of the jacket in still air.',
          head: ['Cable', 'current', 'interval', 'surroundings °C', 'rating °C', 'rating', 'set by'],
          sides: ['left', 'right', 'right', 'right', 'right', 'left', 'left'],
          rows: cables.map(({ name, carrying: c }) => [
            name,
            figureCell(c ? { ...c.current_A, condition: undefined } : null),
            intervalCell(c?.current_A ?? null),
            c?.ambient_C.toFixed(0) ?? UNKNOWN,
            c?.rating_C.toFixed(0) ?? UNKNOWN,
            c ? (c.rating_assumed ? 'assumed' : 'as stated') : UNKNOWN,
            c?.calibrated_by ?? UNKNOWN,
          ]),
        },
        ...(tests.length > 0 ? [{ kind: 'list', items: tests } as const] : []),
        ...(current.cautions.length > 0 ? [{ kind: 'list', items: current.cautions } as const] : []),
      ],
    },
  ];
}

export function standingSection({ decide }: Findings): Section[] {
  if (decide === null) return [];
  const counted = decide.criteria.filter(({ weight }) => weight > 0);
  const chart = placeChart(decide, { width: TEXT_WIDTH, theme: paperTheme });
  const firstOf = (band: number) => decide.cables.findIndex((c) => c.band === band) + 1;
  const sizeOf = (band: number) => decide.cables.filter((c) => c.band === band).length;
  const values = decide.value.filter((v) => v.price_per_m !== null);
  return [
    {
      id: 'standing',
      title: 'Who stands where',
      blocks: [
        ...paragraphs(decide.sentence, decide.taste_sentence),
        {
          kind: 'picture',
          ...chart,
          caption: `Chance of each place in 100, from ${decide.draws} joint draws at the stated weights.`,
        },
        {
          kind: 'table',
          caption: 'Places. The second chance is over tastes near the stated weights, measurement doubt included.',
          head: ['Cable', 'places', 'chance of first', 'over tastes', 'what would have to matter more'],
          sides: ['left', 'left', 'right', 'right', 'left'],
          rows: decide.cables.map((c) => [
            c.name,
            bandPlaces(firstOf(c.band), sizeOf(c.band)),
            chanceText(Math.min(1, c.probability_first)),
            chanceText(Math.min(1, c.acceptability[0] ?? 0)),
            c.to_come_first_text,
          ]),
        },
        {
          kind: 'table',
          caption:
            decide.job === null
              ? 'What counted, and by which fixed scale.'
              : `What counted for the job “${decide.job}”, and by which fixed scale.`,
          head: ['Criterion', 'weight', 'worth nothing at', 'worth all at', 'unit', 'scale'],
          sides: ['left', 'right', 'right', 'right', 'left', 'left'],
          rows: counted.map((c) => [
            c.name,
            `${Math.round(100 * c.weight)} %`,
            String(Number(c.worst.toPrecision(4))),
            String(Number(c.best.toPrecision(4))),
            c.unit === '1' ? '' : c.unit,
            `${c.shape}, ${c.fixed ? 'stated' : 'suggested'}`,
          ]),
        },
        ...(values.length > 0
          ? [
              { kind: 'heading', text: 'Value for money' } as const,
              { kind: 'list', items: values.map(({ name, text }) => `${name}: ${text}`) } as const,
            ]
          : []),
      ],
    },
  ];
}
