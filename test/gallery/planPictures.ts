/** What a plan prints, from a starter trial of an invented club. */
import { planOf } from '../../src/findings/plan.ts';
import { starterEntries } from '../../src/findings/starter.ts';
import { cutListSheets } from '../../src/report/labels/cutListSheets.ts';
import { flagSheets } from '../../src/report/labels/flagSheets.ts';
import { labelSheets } from '../../src/report/labels/labelSheets.ts';
import { pieceLabels } from '../../src/report/labels/pieceLabels.ts';
import { slate } from '../../src/report/labels/slate.ts';
import { fold } from '../../src/trial/fold.ts';

const CLUB = 'Brackenfell Rally Club';

function plan() {
  let made = 0;
  const saying = {
    trial: 'brackenfell',
    at: '2026-10-03T10:00:00.000Z',
    newId: () => `019a0000-0000-7000-8000-${(++made).toString(16).padStart(12, '0')}`,
  };
  const answers = {
    title: CLUB,
    cables: ['Harrow & Sedge', 'Quill'],
    size: '1/0 AWG',
    metal: 'OFC',
    boughtLength: '10 ft',
    tools: ['kitchen scale', 'tape', 'four-wire meter', 'thermometer'],
    temperature: '20',
  };
  return planOf(fold(starterEntries(answers, saying)), { draws: 0 });
}

/** Not a readable code: modules by a rule, so that the picture stays the same. */
const MODULES = Array.from({ length: 21 }, (_, y) =>
  Array.from({ length: 21 }, (_, x) => (x * y + 2 * x + 5 * y) % 7 < 3),
);

const labels = () => pieceLabels(plan(), { blind: false, linkOf: (code) => code, matrixOf: () => MODULES });

export const PLAN_PICTURES: Readonly<Record<string, () => string>> = {
  'labels-a4.svg': () => labelSheets(labels(), 'A4')[0]!,
  'flags-letter.svg': () => flagSheets(labels(), 'Letter')[0]!,
  'cut-list-a4.svg': () => cutListSheets(plan(), CLUB, 'A4')[0]!,
  'slate.svg': () =>
    slate({
      trial: `${CLUB}, heavy cable`,
      part: '1',
      step: 'weigh',
      code: 'KR',
      take: 2,
      timeOfDay: '14:07:32',
      day: '2026-10-03',
    }),
};
