import { pieceSign, quantityWords } from '../../trial/plainWords.ts';
import type { Warning } from '../schema.ts';
import type { Judged } from '../shapes/flex.ts';
import { ONE_TEMPERATURE } from './atTemperature.ts';
import type { ScatterApart } from './bendReadings.ts';
import type { CableBending } from './flex.ts';
import { differencesText } from './pushBesideDroop.ts';
import type { JudgementsRead } from './readJudgements.ts';
import { listed, timesText } from './words.ts';

const warning = (code: string, cable: string | null, text: string): Warning => ({ code, cable, text });

function aboutCable({ readings, shown, droops, pushes, coilWhy, springWhy }: CableBending): Warning[] {
  const list: Warning[] = [];
  const sign = (specimen: string) => pieceSign(readings, specimen);
  for (const { shown: d, weight, muchSet, leftOut } of droops) {
    if (leftOut !== '') list.push(warning('droop-angle-past-plumb', shown.cable, leftOut));
    if (d.bending_stiffness === null) {
      const code = d.better_overhang_mm !== null || weight ? 'droop-settles-nothing' : 'weight-missing';
      list.push(warning(code, shown.cable, d.text));
    } else if (muchSet) list.push(warning('droop-set', shown.cable, `${sign(d.specimen)}: ${d.text}`));
    else if (d.way === 'one face') list.push(warning('droop-one-face', shown.cable, `${sign(d.specimen)}: ${d.text}`));
  }
  for (const { shown: p } of pushes)
    if (p.bending_stiffness === null) list.push(warning('push-settles-nothing', shown.cable, p.text));
    else if (p.text.includes('shear'))
      list.push(warning('push-short-span', shown.cable, `${sign(p.specimen)}: ${p.text}`));
  if (shown.bending_stiffness && shown.temperature_C === null)
    list.push(
      warning(
        'flex-temperature-missing',
        shown.cable,
        'No temperature is noted with its bending: stiffness changes with it, so the figure compares with nothing.',
      ),
    );
  if (coilWhy !== '') list.push(warning('flex-coil-left-out', shown.cable, coilWhy));
  if (springWhy !== '') list.push(warning('flex-spring-back-left-out', shown.cable, springWhy));
  if (shown.bounds?.place != null && (shown.bounds.place < 0 || shown.bounds.place > 1))
    list.push(warning('stiffness-outside-bounds', shown.cable, shown.bounds.text));
  return list;
}

/** A piece whose repeats scatter far out of its fellows': it widens its own figure, and theirs no more. */
function aboutScatter(bending: readonly CableBending[], apart: readonly ScatterApart[]): Warning[] {
  return apart.map(({ cable, specimen, quantity, times }) => {
    const of = bending.find((b) => b.shown.cable === cable);
    const sign = of ? pieceSign(of.readings, specimen) : specimen;
    const name = of?.shown.name ?? cable;
    return warning(
      'flex-scatter-apart',
      cable,
      `Repeats of the ${quantityWords(quantity)} of ${sign} scatter ${timesText(times)} as much as those of the other pieces: that widens the ± of ${name} alone. Read it again.`,
    );
  });
}

/** Readings of one cable taken so far apart that they were not brought together. */
function aboutOwnTemperatures({ shown, all }: CableBending): Warning[] {
  const noted = all.flatMap((s) => s.range ?? []);
  if (noted.length === 0 || shown.cold_stiffening !== null) return [];
  const [low, high] = [Math.min(...noted), Math.max(...noted)];
  if (!(high - low > ONE_TEMPERATURE)) return [];
  return [
    warning(
      'flex-own-temperatures-apart',
      shown.cable,
      `It was bent at ${low.toFixed(1)} and at ${high.toFixed(1)} °C: the two were kept apart, and the figure is that at ${shown.temperature_C!.toFixed(1)} °C.`,
    ),
  ];
}

/** Stiffnesses of different cables taken more than 3 °C apart. */
function aboutTemperatures(bending: readonly CableBending[]): Warning[] {
  const noted = bending.flatMap(({ shown }) => (shown.temperature_C === null ? [] : [shown]));
  if (noted.length < 2) return [];
  const sorted = [...noted].sort((a, b) => a.temperature_C! - b.temperature_C!);
  const [coldest, warmest] = [sorted[0], sorted[sorted.length - 1]];
  const apart = warmest.temperature_C! - coldest.temperature_C!;
  if (!(apart > ONE_TEMPERATURE)) return [];
  return [
    warning(
      'flex-temperatures-apart',
      null,
      `Bending was read ${apart.toFixed(1)} °C apart (${coldest.name} coldest, ${warmest.name} warmest): stiffness changes with temperature, so let all pieces come to one and read again before comparing.`,
    ),
  ];
}

function aboutJudgements(judged: Judged | null, read: JudgementsRead, names: ReadonlyMap<string, string>): Warning[] {
  const list: Warning[] = [];
  if (read.againstItself.length > 0)
    list.push(
      warning(
        'judged-against-itself',
        null,
        `${listed(read.againstItself)}: both pieces are of one cable, which says nothing about cables; left out.`,
      ),
    );
  if (read.unreadable.length > 0)
    list.push(
      warning(
        'judgement-not-understood',
        null,
        `${listed(read.unreadable)}: a piece or the result is not known; left out.`,
      ),
    );
  if (!judged) return list;
  if (judged.groups.length > 1)
    list.push(
      warning(
        'judgements-not-joined',
        null,
        `No judgement joins ${judged.groups.map((g) => listed(g.map((c) => names.get(c) ?? c))).join(' with ')}: judge a pair across, or the order between them rests on nothing.`,
      ),
    );
  const spread = read.temperatures.length > 1 ? Math.max(...read.temperatures) - Math.min(...read.temperatures) : 0;
  if (spread > ONE_TEMPERATURE)
    list.push(
      warning(
        'flex-temperatures-apart',
        null,
        `Pairs were judged ${spread.toFixed(1)} °C apart: a cable stiffens in the cold, so the pairs do not compare.`,
      ),
    );
  if (judged.judges_apart && judged.judges_apart.widened > 1)
    list.push(
      warning(
        'judges-differ',
        null,
        `The judges differ by more than chance; every doubt was widened by ${judged.judges_apart.widened.toFixed(1)} times.`,
      ),
    );
  if (Math.abs(judged.side.value) > 2 * judged.side.se)
    list.push(
      warning(
        'side-matters',
        null,
        `The piece in the ${judged.side.value > 0 ? 'left' : 'right'} hand was preferred more often than chance allows; this was taken out. Change hands from round to round.`,
      ),
    );
  return list;
}

/** Each once: a piece that was read twice in one way is warned of once. */
function eachOnce(warnings: readonly Warning[]): Warning[] {
  const key = (w: Warning) => `${w.code}\n${w.cable}\n${w.text}`;
  return [...new Map(warnings.map((w) => [key(w), w])).values()];
}

/** Everything worth a warning about bending. */
export function flexWarnings(
  bending: readonly CableBending[],
  apart: readonly ScatterApart[],
  judged: Judged | null,
  read: JudgementsRead,
  names: ReadonlyMap<string, string>,
): Warning[] {
  return eachOnce([
    ...bending.flatMap(aboutCable),
    ...aboutScatter(bending, apart),
    ...bending.flatMap(aboutOwnTemperatures),
    ...differencesText(bending.map((b) => b.shown)).map((text) => warning('flex-methods-differ', null, text)),
    ...aboutTemperatures(bending),
    ...aboutJudgements(judged, read, names),
  ]);
}
