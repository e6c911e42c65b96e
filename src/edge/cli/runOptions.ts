import {
  type RunLoad,
  type RunQuestion,
  USUAL_RUN,
  usualCharging,
  usualJointOhms,
} from '../../methods/current/runCheck/question.ts';
import { usualTaken } from '../../report/runTaken.ts';
import { EXIT, Failure } from './failure.ts';
import {
  dropOf,
  layerOf,
  loadOf,
  measuredOf,
  ohmsBetween,
  quantityOf,
  returnOf,
  shareOf,
  voltsOf,
  wrong,
} from './runTyped.ts';

/** What `cupel run` was given, as typed. */
export interface RunOptions {
  cable: string[];
  load: string;
  length: string;
  peak?: string;
  peakShare?: string;
  peakSeconds?: string;
  efficiency?: string;
  supply: string;
  charging?: string;
  supplyOhms: string;
  return: string;
  joints?: string;
  ambient?: string;
  bundle: string;
  layer?: string;
  drop?: string;
  measured?: string;
  installed?: string;
  sizes: string;
  profile?: string;
  overload?: string;
  json: boolean;
  ascii: boolean;
}

/** Options that say more about another one, which must then be there too. */
function requireCompany(o: RunOptions, load: RunLoad['kind']): void {
  const alone = (option: string, text: string | undefined, needs: string) => {
    if (text !== undefined)
      throw new Failure(`--${option} says more about ${needs}; expected both or neither.`, EXIT.wrongUse);
  };
  if (o.peak === undefined) {
    alone('peak-share', o.peakShare, '--peak');
    alone('peak-seconds', o.peakSeconds, '--peak');
  }
  if (o.measured === undefined) alone('installed', o.installed, '--measured');
  if (load === 'amps') alone('efficiency', o.efficiency, `a load in watts, and --load was "${o.load}"`);
}

/** The question that the options ask. What cannot be is left to the check, which names it; what cannot be read ends here. */
export function questionOf(o: RunOptions): RunQuestion {
  const resting = voltsOf('supply', o.supply);
  const charging =
    o.charging === undefined
      ? { volts: usualCharging(resting.volts), direct: true }
      : o.charging.trim().toLowerCase() === 'none'
        ? null
        : voltsOf('charging', o.charging);
  const load = loadOf('load', o.load);
  const peak = o.peak === undefined ? null : loadOf('peak', o.peak);
  if (peak && peak.kind !== load.kind) throw wrong('peak', `"${o.peak}"`, `the same unit as --load ${o.load}`);
  const length = quantityOf('length', o.length, 'length', 'm', 'a length, such as 5m or 16ft');
  const ohms = ohmsBetween('supply-ohms', o.supplyOhms, 'mΩ or a range of it, such as 2-8');
  requireCompany(o, load.kind);
  return {
    supply: {
      resting: resting.volts,
      charging: charging === null || Number.isNaN(charging.volts) ? null : charging.volts,
      ohms: { value: (ohms.low + ohms.high) / 2, ...ohms },
      direct: resting.direct && (charging?.direct ?? true),
    },
    load: {
      kind: load.kind,
      steady: load.amount,
      peak: peak && {
        amount: peak.amount,
        share: shareOf('peak-share', o.peakShare, USUAL_RUN.peakShare),
        seconds: quantityOf(
          'peak-seconds',
          o.peakSeconds ?? `${USUAL_RUN.peakSeconds}`,
          'time',
          's',
          'seconds, such as 30',
        ),
      },
      efficiency: load.kind === 'watts' ? shareOf('efficiency', o.efficiency, USUAL_RUN.efficiency) : 1,
    },
    length,
    back: returnOf(o.return, length),
    joints: [
      {
        name: 'joints',
        count: 1,
        ohms:
          o.joints === undefined
            ? usualJointOhms()
            : quantityOf('joints', o.joints, 'resistance', 'mohm', 'mΩ of all joints, such as 0.9'),
      },
    ],
    surroundings: {
      ambient:
        o.ambient === undefined
          ? USUAL_RUN.ambient
          : quantityOf('ambient', o.ambient, 'temperature', '°C', 'a temperature, such as 40 or 40C'),
      bundle: quantityOf('bundle', o.bundle, 'count', '', 'how many cables touch, such as 1'),
      layer: o.layer === undefined ? null : layerOf(o.layer),
    },
    allowedDrop: dropOf(o.drop, resting.volts),
    measured: o.measured === undefined ? null : measuredOf(o.measured, o.installed),
  };
}

/** What was left to the usual, for the line that says what was asked. */
export const takenOf = (o: RunOptions): string[] =>
  usualTaken(
    {
      watts: loadOf('load', o.load).kind === 'watts',
      peak: o.peak !== undefined,
      resting: voltsOf('supply', o.supply).volts,
    },
    {
      peakSeconds: o.peakSeconds === undefined,
      peakShare: o.peakShare === undefined,
      efficiency: o.efficiency === undefined,
      charging: o.charging === undefined,
      ambient: o.ambient === undefined,
      drop: o.drop === undefined,
      joints: o.joints === undefined,
      body: o.return.trim().toLowerCase() === 'body',
    },
  );
