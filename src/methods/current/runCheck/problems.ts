import { ZERO_CELSIUS } from '../../../units/dimension.ts';
import { MOST_IN_BUNDLE } from '../thermal/run.ts';
import {
  type MeasuredDrop,
  MOST_AMPS,
  MOST_LAYER,
  MOST_METRES,
  MOST_VOLTS,
  mostAsked,
  type RunLoad,
  type RunQuestion,
  type RunReturn,
} from './question.ts';

/** K: surroundings are believed from the one to the other. */
const COLDEST = ZERO_CELSIUS - 100;
const HOTTEST = ZERO_CELSIUS + 200;

const plain = (x: number): string => String(Number(x.toPrecision(6))).replace('-', '−');
const percent = (share: number): string => `${plain(100 * share)} %`;
const above = (x: number): boolean => x > 0 && Number.isFinite(x);

/** The sentences whose condition holds. */
type Found = readonly (readonly [found: boolean, sentence: string])[];
const said = (found: Found): string[] => found.filter(([is]) => is).map(([, sentence]) => sentence);

/**
 * Why a run cannot be checked: what was found, what is expected, and why, each in one sentence; empty when it can. What is
 * refused outright (mains, more than 60 V) comes first.
 */
export function runProblems(q: RunQuestion): string[] {
  return [
    ...supplyProblems(q.supply),
    ...lengthProblems('The run', q.length),
    ...loadProblems(q),
    ...said([
      [
        !(q.allowedDrop > 0 && q.allowedDrop < 1),
        `${percent(q.allowedDrop)} of the supply’s volts may be lost; expected is above 0 and below 100 %.`,
      ],
      [
        q.joints.some((j) => !(j.ohms >= 0 && Number.isInteger(j.count) && j.count >= 0)),
        'A joint has less than no ohms, or is counted in parts; expected are milliohms from 0 up and whole numbers of joints.',
      ],
    ]),
    ...aroundProblems(q.surroundings),
    ...returnProblems(q.back, q.length),
    ...measuredProblems(q.measured),
  ];
}

/** Why an overload cannot be looked at; empty when it can, and where none is asked about. A that cannot be read is for others to name. */
export const overloadProblems = (current: number | null): string[] =>
  current !== null && !Number.isNaN(current) && !(current > 0 && current <= MOST_AMPS)
    ? [`The overload is ${plain(current)} A; expected are amps above 0 and up to ${MOST_AMPS}.`]
    : [];

/** A that the load draws at its peak at the least: with nothing lost on the way, from the higher of the two supplies. */
function leastPeak({ load, supply }: RunQuestion): number {
  const asked = mostAsked(load);
  return load.kind === 'amps' ? asked : asked / load.efficiency / Math.max(supply.resting, supply.charging ?? 0);
}

/** Why an overload is none: it lies below what the load draws anyway. Empty where it is one, and where none is asked about. */
export function smallOverload(current: number | null, q: RunQuestion): string[] {
  const least = leastPeak(q);
  if (current === null || !(current < least)) return [];
  const draws = `${plain(Number(least.toPrecision(4)))} A${q.load.kind === 'amps' ? '' : ' or more'}`;
  return [
    `The overload of ${plain(current)} A lies below the ${draws} that the load itself draws${q.load.peak ? ' at its peak' : ''}; expected is more than that.`,
  ];
}

function supplyProblems({ resting, charging, ohms, direct }: RunQuestion['supply']): string[] {
  if (!direct)
    return [
      `The supply is fed from the mains; expected is direct current of at most ${MOST_VOLTS} V from a battery and what charges it, because a shock from the mains can kill and other rules hold there. This check does not answer.`,
    ];
  const tooMuch = (when: string) =>
    `The supply has ${when}; expected is direct current of at most ${MOST_VOLTS} V, because above that a shock is dangerous and other rules hold. This check does not answer.`;
  if (resting > MOST_VOLTS) return [tooMuch(`${plain(resting)} V at rest`)];
  if (charging !== null && charging > MOST_VOLTS)
    return [tooMuch(`${plain(charging)} V while it charges, of ${plain(resting)} V at rest`)];
  return said([
    [!above(resting), `The supply has ${plain(resting)} V at rest; volts above zero are needed.`],
    [
      charging !== null && !(charging > 0),
      `The supply has ${plain(charging ?? 0)} V while it charges; volts above zero are needed, or none where nothing charges it.`,
    ],
    [
      charging !== null && charging > 0 && charging < resting,
      `Charging at ${plain(charging ?? 0)} V lies below the ${plain(resting)} V at rest: the two are swapped, or one is mistyped.`,
    ],
    [
      !(ohms.low >= 0 && ohms.high >= ohms.low && Number.isFinite(ohms.high)),
      `The source has ${plain(1000 * ohms.low)} to ${plain(1000 * ohms.high)} mΩ; expected are milliohms from 0 up, the smaller first.`,
    ],
  ]);
}

const lengthProblems = (what: string, metres: number): string[] =>
  said([
    [!above(metres), `${what} is ${plain(metres)} m long; a length above zero is needed.`],
    [
      above(metres) && metres > MOST_METRES,
      `${what} is ${plain(metres)} m long; expected is at most ${MOST_METRES} m, because at so few volts nothing leads farther: look at the figure and its unit.`,
    ],
  ]);

function loadProblems({ load, supply }: RunQuestion): string[] {
  const { kind, steady, peak, efficiency } = load;
  const unit = kind === 'amps' ? 'A' : 'W';
  const most = MOST_AMPS * (kind === 'amps' ? 1 : supply.resting);
  const asked = mostAsked(load);
  return [
    ...said([
      [
        !(steady >= 0) || !Number.isFinite(steady),
        `The steady load is ${plain(steady)} ${unit}; expected is a load above zero.`,
      ],
      [steady === 0 && peak === null, 'The load is 0: nothing flows, and there is nothing to check.'],
      [
        asked > most,
        `The load is ${plain(asked)} ${unit}; expected are at most ${MOST_AMPS} A, because no battery of these volts drives more: look at the figure and its unit.`,
      ],
      [
        !(efficiency > 0 && efficiency <= 1),
        `The efficiency is ${percent(efficiency)}; expected is above 0 and at most 100 %, because a load gives no more than it draws.`,
      ],
    ]),
    ...(peak === null ? [] : peakProblems(peak, steady, unit)),
  ];
}

const peakProblems = (
  { amount, share, seconds }: NonNullable<RunLoad['peak']>,
  steady: number,
  unit: string,
): string[] =>
  said([
    [
      !(amount >= steady),
      `The peak of ${plain(amount)} ${unit} lies below the steady ${plain(steady)} ${unit}: the two are swapped, or one is mistyped.`,
    ],
    [!(share >= 0 && share <= 1), `The load is at its peak for ${percent(share)} of the time; expected is 0 to 100 %.`],
    [!above(seconds), `A peak lasts ${plain(seconds)} s; a time above zero is needed.`],
  ]);

function aroundProblems({ ambient, bundle, layer }: RunQuestion['surroundings']): string[] {
  return said([
    [
      !(ambient >= COLDEST && ambient <= HOTTEST),
      `The surroundings are at ${plain(ambient - ZERO_CELSIUS)} °C; expected is −100 to 200 °C.`,
    ],
    [
      !(Number.isInteger(bundle) && bundle >= 1 && bundle <= MOST_IN_BUNDLE),
      `The bundle is of ${plain(bundle)} cables; expected is a whole number from 1, a cable by itself, to ${MOST_IN_BUNDLE}.`,
    ],
    [
      layer !== null && !(layer.thickness > 0 && layer.thickness <= MOST_LAYER),
      `The layer round it is ${plain(1000 * (layer?.thickness ?? 0))} mm thick; expected is above 0 and at most ${1000 * MOST_LAYER} mm.`,
    ],
    [
      layer !== null && !above(layer.conductivity),
      `The layer round it conducts ${plain(layer?.conductivity ?? 0)} W/(m K); expected is above 0, such as 0.05 for carpet.`,
    ],
  ]);
}

function returnProblems(back: RunReturn, out: number): string[] {
  if (back.kind === 'body measured')
    return above(back.ohms) || back.ohms === 0
      ? []
      : [`The body has ${plain(1000 * back.ohms)} mΩ; expected are milliohms from 0 up.`];
  if (back.kind === 'body unknown')
    return back.low >= 0 && back.high >= back.low
      ? []
      : [
          `The body has ${plain(1000 * back.low)} to ${plain(1000 * back.high)} mΩ; expected are milliohms from 0 up, the smaller first.`,
        ];
  // What is wrong with the length out is said once.
  const length = back.length === out ? [] : lengthProblems('The way back', back.length);
  return back.kind === 'other cable' && !(back.ohmsPerMetre > 0)
    ? [...length, 'The cable of the way back has no ohms per metre; a resistance above zero is needed.']
    : length;
}

function measuredProblems(measured: MeasuredDrop | null): string[] {
  if (!measured) return [];
  const { current, plus, minus } = measured;
  if (!(current > 0))
    return [
      `The volts lost were measured at ${plain(current)} A; a current above zero is needed: without one nothing is lost.`,
    ];
  return plus >= 0 && minus >= 0
    ? []
    : [
        `${plain(Math.min(plus, minus))} V were lost on the way; volts from 0 up are expected: the leads of the meter are swapped.`,
      ];
}
