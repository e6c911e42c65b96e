import type { Entry, EntryKind } from '../journal/entry.ts';
import { fold } from '../trial/fold.ts';
import { specimenRow } from './plan/cablePieces.ts';
import { PLAN_METHODS, type PlanMethod } from './plan/settings.ts';
import { planOf } from './plan.ts';
import { ownedTool } from './starter/ownedTools.ts';

/** What a first trial is asked. */
export interface StarterAnswers {
  title: string;
  /** How many cables; or their names, where they are known: makers and models can follow. */
  cables: number | readonly string[];
  /** One label for all: `1/0 AWG`, and the metal as printed, which may be blank. */
  size: string;
  metal: string;
  /** Length bought of each, as typed (`10 ft`); blank when nothing is bought yet. */
  boughtLength?: string;
  /** Names from {@link OWNED_TOOLS}; others are passed over. */
  tools: readonly string[];
  /** Limits of error as the boxes print them, by name of the tool; a tool without one gets the usual limit of its kind. */
  limits?: Readonly<Record<string, string>>;
  /** Whether a length of plain solid copper wire is there to check the tools, with its size. */
  control?: { size: string } | null;
  /** °C; blank for none. */
  temperature?: string;
  methods?: readonly PlanMethod[];
  shortfall?: number;
}

export interface Saying {
  trial: string;
  /** ISO 8601, UTC. */
  at: string;
  /** Makes one UUIDv7 a call, in rising order. */
  newId: () => string;
  by?: string;
  device?: string;
}

/** More cables than this in a first trial are a slip of the keyboard. */
const MOST_CABLES = 100;

function namesOf({ cables }: StarterAnswers): { cable: string; maker: string }[] {
  const listed = typeof cables === 'number' ? Array.from({ length: cables }, () => '') : cables;
  if (listed.length < 1 || listed.length > MOST_CABLES)
    throw new RangeError(`a trial starts with 1 to ${MOST_CABLES} cables, got ${listed.length}`);
  return listed.map((maker, i) => ({ cable: `c${i + 1}`, maker: maker.trim() || `Cable ${i + 1}` }));
}

function settingRows({ methods, shortfall }: StarterAnswers): Record<string, string>[] {
  const list: Record<string, string>[] = [];
  if (methods) list.push({ setting: 'methods', value: PLAN_METHODS.filter((m) => methods.includes(m)).join(', ') });
  if (shortfall !== undefined) list.push({ setting: 'shortfall', value: String(shortfall) });
  return list;
}

function toolRows({ tools, limits = {} }: StarterAnswers): Record<string, string>[] {
  const names = [...new Set(tools.map((name) => name.trim().toLowerCase()))];
  return names.flatMap((name) => {
    const tool = ownedTool(name);
    if (!tool) return [];
    const { tool: instrument, kind, resolution, unit } = tool;
    return [{ instrument, kind, resolution, max_error: limits[instrument] ?? '', unit }];
  });
}

const withoutBlanks = (row: Record<string, string>) =>
  Object.fromEntries(Object.entries(row).filter(([, cell]) => cell.trim() !== ''));

/**
 * The entries of a trial from a few answers: the trial, its cables with one label, the tools with their usual limits, the
 * plan's settings, and every piece with its blind code and length. Everything may be changed afterwards; nothing is bought or
 * cut by it.
 *
 * @throws RangeError for no cable, or more than a hundred
 */
export function starterEntries(answers: StarterAnswers, saying: Saying): Entry[] {
  const entry = (kind: EntryKind, body: Record<string, string>): Entry => ({
    id: saying.newId(),
    trial: saying.trial,
    kind,
    at: saying.at,
    by: saying.by ?? '',
    device: saying.device ?? '',
    body: withoutBlanks(body),
  });
  const label = { claimed_size: answers.size, claimed_metal: answers.metal };
  const bought = answers.boughtLength ?? '';
  const described = [
    entry('trial', {
      trial: saying.trial,
      title: answers.title,
      target_temperature: answers.temperature ?? '',
      opened_on: saying.at.slice(0, 10),
    }),
    ...namesOf(answers).map((name) => entry('cable', { ...name, ...label, bought_length: bought })),
    ...(answers.control
      ? [
          entry('cable', {
            cable: 'control',
            role: 'control',
            maker: 'Solid building wire',
            claimed_size: answers.control.size,
            claimed_metal: 'copper',
            stranding: 'solid',
          }),
        ]
      : []),
    ...toolRows(answers).map((row) => entry('instrument', row)),
    ...settingRows(answers).map((row) => entry('setting', row)),
  ];
  const plan = planOf(fold(described), { draws: 0 });
  const pieces = plan.cables.flatMap((c) => c.pieces);
  return [...described, ...pieces.map((piece) => entry('specimen', specimenRow(piece)))];
}
