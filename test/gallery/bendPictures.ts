/** How cables bend, from the hand-written findings. */
import { turnOfSet } from '../../src/methods/flex/droopCurve.ts';
import { droopOfSet } from '../../src/methods/flex/droopWithSet.ts';
import { bendMethods } from '../../src/report/bend/bendMethods.ts';
import { boundsStrip } from '../../src/report/bend/boundsStrip.ts';
import { droopDrawing } from '../../src/report/bend/droopDrawing.ts';
import { methodStrip } from '../../src/report/bend/methodStrip.ts';
import { orderBesideOrder } from '../../src/report/bend/orderBesideOrder.ts';
import { placeStrip } from '../../src/report/bend/placeStrip.ts';
import { pushLoop } from '../../src/report/bend/pushLoop.ts';
import { darkTheme, lightTheme, paperTheme, type Theme } from '../../src/report/theme.ts';
import { fourBent } from '../fixtures/findings/flex.ts';

const methods = bendMethods(fourBent);
const method = (id: string) => methods.find((each) => each.id === id)!;

const LAMBDA = 2.4;
const OVERHANG = 320;
/** What a rule would read of a piece that stands off by 6 % of its overhang, mm: a little off the computed shape. */
const TIPS = {
  up: droopOfSet(LAMBDA, turnOfSet(0.06), 1).drop * OVERHANG + 1,
  down: droopOfSet(LAMBDA, turnOfSet(0.06), -1).drop * OVERHANG - 2,
};

const drooping = (theme: Theme, lambda: number | null) =>
  droopDrawing(
    {
      name: 'Sedge',
      overhang: OVERHANG,
      lambda,
      set: 0.06,
      faces: [
        { face: 'up', drop: TIPS.up, chordAngle: null },
        { face: 'down', drop: TIPS.down, chordAngle: null },
      ],
      outerDiameter: 12.4,
      jacketColour: 'dark blue',
    },
    { width: 420, theme },
  );

const POINTS = [2, 4, 6, 8].map((deflection) => ({ deflection, force: 0.46 * deflection - 0.004 * deflection ** 2 }));

const loop = (theme: Theme) =>
  pushLoop(
    {
      loading: POINTS,
      unloading: POINTS.slice(0, 3)
        .reverse()
        .map(({ deflection, force }) => ({ deflection, force: 0.7 * force })),
      line: { slope: 0.45, intercept: 0, until: 6 },
      state: 'worked in',
    },
    { width: 400, height: 230, theme },
  );

export const BEND_PICTURES: Readonly<Record<string, () => string>> = {
  'bend-orders-light.svg': () =>
    orderBesideOrder(method('droop'), method('judged'), { width: 1360, theme: lightTheme }).svg,
  'bend-push-dark.svg': () => methodStrip(method('push'), { width: 640, theme: darkTheme }).svg,
  'bend-coil-phone.svg': () => methodStrip(method('coil'), { width: 340, theme: lightTheme }).svg,
  'bend-spring-paper.svg': () => methodStrip(method('spring'), { width: 640, theme: paperTheme }).svg,
  'bend-droop-light.svg': () => drooping(lightTheme, LAMBDA),
  'bend-droop-refused-dark.svg': () => drooping(darkTheme, null),
  'bend-push-loop.svg': () => loop(lightTheme),
  'bend-bounds.svg': () =>
    boundsStrip(fourBent.cables[0]!.bounds!, fourBent.cables[0]!.bending_stiffness, { width: 360, theme: lightTheme }),
  'bend-places.svg': () => placeStrip([0.61, 0.27, 0.116, 0.004], { width: 320, theme: lightTheme }),
};
