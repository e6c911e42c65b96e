import type { Findings } from '../../../findings/schema.ts';
import type { Entry } from '../../../journal/entry.ts';
import { corrections } from '../../../trial/corrections.ts';
import type { SealedPart, Trial } from '../../../trial/trial.ts';
import type { FigureUnits } from '../../figures.ts';
import { andList } from '../../words/andList.ts';
import type { ChangedSince } from '../changedSince.ts';
import {
  cautionsSection,
  checkSection,
  conditionsSection,
  correctionsSection,
  disclosureSection,
  methodsSection,
  methodTexts,
  repliesSection,
  toolsSection,
} from './about.ts';
import { CC_BY, type Licence, type ReportDocument, type Section } from './blocks.ts';
import { cablesSection } from './cables.ts';
import { overviewSection, shownCables } from './overview.ts';
import { ampsSection, bendSection, jacketSection, standingSection } from './places.ts';

export interface ReportInput {
  /** The journal that is published: its corrections are listed. */
  entries: readonly Entry[];
  trial: Trial;
  findings: Findings;
  /** The sealed part that this is; null for the trial as it stands. */
  part?: SealedPart | null;
  /** What would read otherwise today; only with a part. */
  changed?: ChangedSince | null;
  units?: FigureUnits;
  licence?: Licence;
  /** What the data package is called where it is published. */
  packageName?: string;
}

const PLACES: Readonly<Record<string, string>> = {
  inside: 'what is inside',
  bend: 'how they bend',
  jacket: 'the jacket',
  amps: 'what they carry',
  standing: 'who stands where',
};

const HASH_SHOWN = 16;

/** The beginning of the data's hash in groups of four. */
export const shortHash = (content: string): string => content.slice(0, HASH_SHOWN).replace(/(.{4})(?=.)/g, '$1 ');

function partLineOf(part: SealedPart | null): string {
  if (part === null) return 'As it stands, not sealed';
  const title = part.title || andList(part.places.map((place) => PLACES[place] ?? place));
  const sealed = part.at === null ? 'sealed' : `sealed ${part.at.slice(0, 10)}`;
  return `Part ${part.part}: ${title} · ${sealed}`;
}

const MEASURED: readonly (readonly [keyof Findings['cables'][number], string, string])[] = [
  ['conductor_area', 'metal area', 'mm2'],
  ['resistance_20C', 'resistance at 20 °C', 'mohm/m'],
  ['copper_of_claim', 'copper over the copper that the label claims', '1'],
  ['mass_per_metre', 'mass of the conductor per length', 'g/m'],
  ['outer_diameter', 'outer diameter', 'mm'],
];

function measuredIn(findings: Findings): { name: string; unit: string }[] {
  const inside = MEASURED.filter(([key]) => findings.cables.some((c) => c[key] !== null));
  const list = inside.map(([, name, unit]) => ({ name, unit }));
  if (findings.flex?.cables.some((c) => c.bending_stiffness)) list.push({ name: 'bending stiffness', unit: 'N m2' });
  if (findings.jacket?.cables.some((c) => c.wall)) list.push({ name: 'wall of the jacket', unit: 'mm' });
  return list;
}

/** The summary: what is inside, else the first of the other places that says anything; and the order, where one was asked for. */
function leadOf({ sentence, flex, jacket, current, decide }: Findings): string {
  const [first] = [sentence, flex?.sentence, jacket?.sentence, current?.sentence].filter((text) => text);
  return [first, decide?.sentence].filter((text) => text).join(' ');
}

/** A published report as content: the same for every form that it is set in. */
export function reportDocument(input: ReportInput): ReportDocument {
  const { entries, trial, findings, part = null, changed = null, units = {}, licence = CC_BY } = input;
  const title = trial.title || trial.trial;
  const names = new Map(findings.cables.map(({ cable, name }) => [cable, name]));
  const shown = new Set(findings.cables.map(({ cable }) => cable));
  const sections: Section[] = [
    overviewSection(findings, units),
    ...bendSection(findings),
    ...jacketSection(findings),
    ...ampsSection(findings),
    ...standingSection(findings),
    cablesSection(findings, trial, units),
    methodsSection(findings),
    ...toolsSection(trial),
    conditionsSection(trial),
    disclosureSection(trial),
    cautionsSection(findings),
    ...correctionsSection(corrections(entries, trial), changed, part),
    ...repliesSection(
      trial.replies.filter(({ cable }) => shown.has(cable)),
      names,
    ),
    checkSection(findings, input.packageName ?? `${trial.trial}.zip`, licence.name),
  ];
  const lead = leadOf(findings);
  const cables = shownCables(findings);
  return {
    title,
    lead,
    partLine: partLineOf(part),
    sections: sections.filter(({ blocks }) => blocks.length > 0),
    foot: [trial.place, `data ${shortHash(findings.engine.content)}`].filter((text) => text !== '').join(' · '),
    licence,
    dataset: {
      name: title,
      description: `${lead} ${cables.length} cables: ${andList(cables.map(({ name }) => name))}.`.trim(),
      creator: trial.place || trial.trial,
      content: findings.engine.content,
      version: findings.engine.version,
      published: part?.at ?? null,
      measured: measuredIn(findings),
      techniques: methodTexts(findings),
    },
  };
}
