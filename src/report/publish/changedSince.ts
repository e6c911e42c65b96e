import type { CableFindings, Claim, Findings } from '../../findings/schema.ts';
import type { Entry } from '../../journal/entry.ts';
import { mergeEntries } from '../../journal/merge.ts';
import type { Correction } from '../../trial/corrections.ts';
import { heldAmong } from '../../trial/heldRows.ts';
import type { SealedPart } from '../../trial/trial.ts';
import { countText, measuredText, percentText, UNKNOWN } from '../figures.ts';

/** One thing that a published part would say otherwise today. */
export interface Change {
  /** Cable concerned; null for the trial. */
  cable: string | null;
  name: string;
  /** Plain words: `copper, of what the label claims: 98.1 ± 0.4 % then, 97.2 ± 0.5 % now`. */
  text: string;
  /** When the last correction that concerns it was said, ISO 8601; null where none is known. */
  at: string | null;
}

export interface ChangedSince {
  changes: Change[];
  /** What was put right after the seal, dated, in the order of the journal. */
  corrections: Correction[];
}

/** Stands between what a correction concerns and what moved only because the cables of one trial share their tools. */
export const MOVED_WITH_IT = 'These moved with it, because all cables are read with the same tools:';

/** What a correction concerns itself, and what merely moved with it. */
export const ownAndMoved = (changes: readonly Change[]): { own: Change[]; moved: Change[] } => ({
  own: changes.filter(({ at }) => at !== null),
  moved: changes.filter(({ at }) => at === null),
});

type Told = [what: string, text: string];

const outcomeText = ({ outcome }: Claim): string => outcome ?? 'not judged';

function inside(c: CableFindings): Told[] {
  return [
    ['what was found', c.metal_found ?? 'metal not settled'],
    ['copper, of what the label claims', percentText(c.copper_of_claim)],
    ['metal area', measuredText(c.conductor_area)],
    ['resistance at 20 °C', measuredText(c.resistance_20C)],
    ['strands', countText(c.strand_count)],
    ['outer diameter', measuredText(c.outer_diameter)],
    ...c.claims
      .filter((claim) => claim.of_label)
      .map((claim): Told => [`claim “${claim.reading}”`, outcomeText(claim)]),
  ];
}

function bending(findings: Findings, cable: string): Told[] {
  const bent = findings.flex?.cables.find((c) => c.cable === cable);
  const judged = findings.flex?.judged?.cables.find((c) => c.cable === cable);
  return [
    ['bending stiffness', measuredText(bent?.bending_stiffness ?? null)],
    ['band by stiffness', bent?.band?.toString() ?? UNKNOWN],
    ['band by hand', judged?.band?.toString() ?? UNKNOWN],
  ];
}

function jacket(findings: Findings, cable: string): Told[] {
  const about = findings.jacket?.cables.find((c) => c.cable === cable);
  const tests = findings.jacket?.endurance ?? [];
  return [
    ['wall of the jacket', measuredText(about?.wall?.mean ?? null)],
    ['density of the jacket', measuredText(about?.density ?? null)],
    ...tests.map((t): Told => [t.test, t.cables.find((c) => c.cable === cable)?.text ?? UNKNOWN]),
  ];
}

function place(findings: Findings, cable: string): Told[] {
  const standing = findings.decide?.cables.find((c) => c.cable === cable);
  const carried = findings.current?.cables.find((c) => c.cable === cable)?.carrying ?? null;
  return [
    ['current it carries', measuredText(carried?.current_A ?? null)],
    ['band of the standing', standing?.band.toString() ?? UNKNOWN],
  ];
}

const toldOf = (findings: Findings, c: CableFindings): Map<string, string> =>
  new Map([...inside(c), ...bending(findings, c.cable), ...jacket(findings, c.cable), ...place(findings, c.cable)]);

/** The corrections that a part did not hold when it was sealed: said since, or said earlier and arrived since. */
export function correctionsAfter(
  corrections: readonly Correction[],
  { holds, at }: Pick<SealedPart, 'holds' | 'at'>,
  entries: readonly Entry[],
): Correction[] {
  if (holds === null) return at === null ? [...corrections] : corrections.filter((c) => c.at > at);
  const held = new Set(heldAmong(mergeEntries(entries), holds).map(({ id }) => id));
  return corrections.filter(({ entry }) => !held.has(entry));
}

/**
 * What a sealed part would say otherwise today: figures whose shown digits differ, outcomes and bands that moved, and the
 * corrections said since.
 *
 * @param sealed findings of the part as sealed
 * @param now findings of the same places as they stand
 * @param since the corrections that were said after the seal
 */
export function changedSince(sealed: Findings, now: Findings, since: readonly Correction[]): ChangedSince {
  const lastFor = (cable: string): string | null => {
    const about = since.filter((c) => c.cable === cable || c.cable === null);
    return about.length > 0 ? about[about.length - 1]!.at : null;
  };
  const then = new Map(sealed.cables.map((c) => [c.cable, c]));
  const changes = now.cables.flatMap((c): Change[] => {
    const before = then.get(c.cable);
    const at = lastFor(c.cable);
    if (!before) return [{ cable: c.cable, name: c.name, text: 'was not part of it', at }];
    const told = toldOf(sealed, before);
    return [...toldOf(now, c)].flatMap(([what, text]) => {
      const was = told.get(what) ?? UNKNOWN;
      return was === text ? [] : [{ cable: c.cable, name: c.name, text: `${what}: ${was} then, ${text} now`, at }];
    });
  });
  const gone = sealed.cables.filter(({ cable }) => !now.cables.some((c) => c.cable === cable));
  return {
    changes: [
      ...changes,
      ...gone.map(({ cable, name }) => ({ cable, name, text: 'is no longer part of it', at: lastFor(cable) })),
    ],
    corrections: [...since],
  };
}
