/** Looks at a cable: a scraped strand, a magnet, the print on its jacket. One cable after the other. */
import { signal } from '@preact/signals';
import type { Look } from '../../../../findings/bench/wantedLooks.ts';
import { folded, say } from '../journal/journal.ts';
import { show } from './dialogs.ts';
import { freshName } from './freshName.ts';
import { signOfCable } from './names.ts';
import { announce } from './said.ts';
import { done } from './sitting.ts';
import { benchWork } from './work.ts';

/** The look that is being taken. */
export const looking = signal<{ look: Look; cable: string } | null>(null);

/** What was seen in some strands, or of the cable as a whole. */
export interface Sight {
  seen: string;
  /** `outer, middle`; empty where it matters not. */
  where: string;
  /** `3`, or `1 of 3`; empty where nothing was counted. */
  count: string;
}

const leftOf = (look: Look) => benchWork.value?.looks.find((item) => item.look === look)?.left ?? [];

/** Takes up a look: at the cable named, else at the first one left, else at the first of all. */
export function takeLook(look: Look, cable?: string): void {
  const item = benchWork.value?.looks.find((each) => each.look === look);
  const at = cable ?? item?.left[0] ?? item?.cables[0];
  if (at === undefined) return;
  looking.value = { look, cable: at };
  show('look');
}

/** The first look that is left, of any kind. */
export function takeNextLook(): void {
  const item = benchWork.value?.looks.find(({ left }) => left.length > 0) ?? benchWork.value?.looks[0];
  if (item === undefined) announce('The plan asks for no looks. Tick "Scrape a strand and look" on Plan.');
  else takeLook(item.look);
}

/**
 * Keeps what was seen, and goes on to the next cable that is to be looked at so; answers false when none is left.
 *
 * @throws when this browser refuses to keep it
 */
export async function keepLook(sights: readonly Sight[]): Promise<boolean> {
  const [now, trial] = [looking.value, folded.value];
  if (now === null || trial === null) return false;
  const names: string[] = [];
  for (const sight of sights) {
    const evidence = freshName('e');
    await say('evidence', { evidence, ...now, ...sight, at: new Date().toISOString() });
    names.push(evidence);
  }
  const seen = sights
    .map((sight) => [sight.seen, sight.count && `(${sight.count})`].filter(Boolean).join(' '))
    .join(', ');
  const words = `${seen} · ${signOfCable(trial, now.cable)}, ${LOOK_NAMES[now.look].toLowerCase()}`;
  done({ what: 'looked', looks: names, words });
  announce(`Kept: ${words}.`, { kept: true });
  const next = leftOf(now.look).find((cable) => cable !== now.cable);
  if (next === undefined) return false;
  looking.value = { look: now.look, cable: next };
  return true;
}

/** Each look as the list of work calls it. */
export const LOOK_NAMES: Readonly<Record<Look, string>> = {
  print_on_jacket: 'Print on the jacket',
  scraped_strand: 'Scraped strands',
  magnet: 'Magnet',
};
