import { describe, expect, it } from 'vitest';
import { nominalCable, nominalSizes } from '../../src/methods/current/runCheck/nominal.ts';
import { overloads } from '../../src/methods/current/runCheck/overload.ts';
import { exactly, type RunQuestion } from '../../src/methods/current/runCheck/question.ts';
import { runCheck } from '../../src/methods/current/runCheck/runCheck.ts';
import { inTheWayText, noneFitsText } from '../../src/report/runInTheWay.ts';
import { runJson } from '../../src/report/runJson.ts';
import { overloadText, timeText } from '../../src/report/runOverload.ts';
import { usualTaken } from '../../src/report/runTaken.ts';
import { answerText, fuseText, runSentence } from '../../src/report/runWords.ts';
import { displayWidth } from '../../src/report/text/displayWidth.ts';
import { runTable } from '../../src/report/text/runTable.ts';

const QUESTION: RunQuestion = {
  supply: { resting: 12.6, charging: 14.2, ohms: exactly(0.004), direct: true },
  load: { kind: 'amps', steady: 100, peak: null, efficiency: 1 },
  length: 5,
  back: { kind: 'same cable', length: 5 },
  joints: [{ name: 'lug', count: 4, ohms: 1e-4 }],
  surroundings: { ambient: 303.15, bundle: 1, layer: null },
  allowedDrop: 0.06,
  measured: null,
};
const cable = (id: string, name: string, mm2: number) => ({
  ...nominalCable(id, name, mm2 * 1e-6, 353.15),
  measured: true,
});
const CABLES = [
  cable('a', 'Brackenfell', 34),
  cable('b', 'Нить «№ 2» 🧵 <script>alert(1)</script> and far too long a name', 10),
];
const CHECK = runCheck(QUESTION, CABLES, nominalSizes('awg', 353.15));

describe('a run check in words', () => {
  it.each([60, 80, 100])('no line of the table is wider than %i columns', (width) => {
    for (const ascii of [false, true]) {
      const text = runTable(QUESTION, CHECK, { width, ascii });
      for (const line of text.split('\n')) expect(displayWidth(line), line).toBeLessThanOrEqual(width);
      expect(text.endsWith('\n')).toBe(true);
      if (ascii) expect(/[–—─…]/.test(text)).toBe(false);
    }
  });

  it('says what does, what does not, and that it is an estimate', () => {
    const text = runTable(QUESTION, CHECK, { width: 100 }).replace(/\s+/g, ' ');
    expect(text).toContain('Of the measured cables Brackenfell meets volts and heat with one run.');
    expect(text).toContain('The least nominal copper size that does is');
    expect(text).toContain('fuse at the source by the rule you work under; terminals are not judged');
    expect(text).not.toMatch(/\b(safe|approved)\b/i);
  });

  it('says first what one run does, then the fuse of each where several lie side by side', () => {
    const [, thin] = CHECK.answers;
    expect(thin!.parallel).toBeGreaterThan(1);
    expect(fuseText(thin!)).toMatch(
      new RegExp(
        `^One run falls short.*${thin!.parallel} side by side do, each with its own ${thin!.fuseEach!.rating} A fuse`,
      ),
    );
    expect(fuseText(CHECK.answers[0]!)).toMatch(/^One run does: fuse \d+ A/);
  });

  it('a load that nothing feeds has no fuse and no price, whatever may be lost', () => {
    for (const allowedDrop of [0.04, 0.4]) {
      const q: RunQuestion = { ...QUESTION, allowedDrop, load: { ...QUESTION.load, kind: 'watts', steady: 20_000 } };
      const [a] = runCheck(q, CABLES, []).answers;
      expect(answerText(a!)).toBe(
        'Brackenfell: one run cannot feed this load: more is asked for than can come through. Nor do up to 6 side by side, nor would any cable: the joints and the source let too little through. No fuse is named.',
      );
    }
  });

  describe('what stands in the way where no number of runs does', () => {
    const saying = (more: Partial<RunQuestion>, mm2 = 10) =>
      inTheWayText(runCheck({ ...QUESTION, ...more }, [cable('a', 'Brackenfell', mm2)], []).answers[0]!);
    const amps = (steady: number) => ({ ...QUESTION.load, steady });

    it('is the volts, and what of them the joints take', () => {
      expect(saying({ load: amps(200), allowedDrop: 0.04 })).toMatch(
        /^Nor do 6 side by side: at the far end of the doubts they lose \d\.\d\d V where 0\.50 V may be lost, 0\.12 V of it by the joints/,
      );
      const joints = [{ name: 'lug', count: 4, ohms: 1e-3 }];
      expect(saying({ load: amps(200), allowedDrop: 0.04, joints }, 95)).toMatch(
        /1\.20 V of it by the joints alone, which more cable does not mend\.$/,
      );
      const back = { kind: 'body measured', ohms: 0.001 } as const;
      expect(saying({ load: amps(200), allowedDrop: 0.01, back }, 95)).toContain(
        'by the joints and the way back alone',
      );
    });

    it('is the heat, where the volts would do', () => {
      expect(
        saying({ load: amps(400), length: 0.5, back: { kind: 'same cable', length: 0.5 }, allowedDrop: 0.5 }),
      ).toMatch(/^Nor do .*6 side by side.* come to \d+ °C where the rating is 80 °C, as they warm each other\.$/);
    });

    it('is a bundle of more than is looked at', () => {
      const surroundings = { ...QUESTION.surroundings, bundle: 40 };
      expect(saying({ load: amps(200), surroundings })).toBe(
        'More of them side by side are more than is looked at in one bundle.',
      );
    });

    it('is nothing where some do', () => {
      expect(CHECK.answers.map(inTheWayText).every((text) => text === '')).toBe(true);
    });
  });

  it('says of a size why no fuse fits it, and that smaller fuses are another kind', () => {
    const load = { ...QUESTION.load, steady: 80 };
    const size = { ...nominalCable('8 AWG', '8 AWG', 8.37e-6, 333.15), measured: false };
    const q: RunQuestion = {
      ...QUESTION,
      load,
      allowedDrop: 0.5 / 12.6,
      supply: { ...QUESTION.supply, ohms: { value: 0.005, low: 0.002, high: 0.008 } },
      joints: [{ name: 'joints', count: 1, ohms: 0.00105 }],
      length: 4,
      back: { kind: 'same cable', length: 4 },
      surroundings: { ...QUESTION.surroundings, ambient: 313.15 },
    };
    const check = runCheck(q, [], [size]);
    expect(check.answers[0]!.fuseEach?.rating).toBeNull();
    expect(noneFitsText(check.answers[0]!)).toMatch(
      /^8 AWG: \d side by side do, but no fuse fits: 30 A, the least that holds the load, does not do: the cable bears less than that there, 2\d A; smaller fuses, of the blade kind, break 1000 A at most/,
    );
    expect(runTable(q, check)).toContain('smaller fuses');
  });

  it('does not call the volts of a load that may not be fed 100 % lost', () => {
    const q: RunQuestion = {
      ...QUESTION,
      supply: { resting: 12, charging: null, ohms: { value: 0.005, low: 0.002, high: 0.008 }, direct: true },
      load: { kind: 'watts', steady: 2000, peak: null, efficiency: 0.9 },
      length: 4,
      back: { kind: 'same cable', length: 4 },
    };
    const check = runCheck(q, [{ ...CABLES[0]!, rating: 333.15 }], []);
    expect(check.answers[0]!.feeds).toBe('not settled');
    expect(runTable(q, check)).not.toContain('100.0');
    expect(answerText(check.answers[0]!)).toContain(
      'one run falls short on volts and heat and may not feed this load at all: at the far end of its doubt too little comes through. ',
    );
  });

  it('says in one sentence that the surroundings are too hot, and advises nothing more', () => {
    const q: RunQuestion = { ...QUESTION, surroundings: { ambient: 363.15, bundle: 1, layer: null } };
    const check = runCheck(q, CABLES, nominalSizes('awg', 353.15));
    expect(runSentence(q, check)).toMatch(/^The surroundings, 90 °C, are as hot as .* \(80 °C\), or hotter: nothing/);
    expect(runTable(q, check)).not.toMatch(/side by side do|no number of runs/);
  });

  it('says first that no measured cable is in it, and what is missing of each', () => {
    const check = runCheck(QUESTION, [], nominalSizes('awg', 353.15));
    const lacking = 'its outer diameter was not measured';
    const left = [
      { name: 'Brackenfell', text: lacking },
      { name: 'Quill', text: lacking },
      { name: 'Tollgate', text: 'its resistance was not read' },
    ];
    expect(runSentence(QUESTION, check, left)).toMatch(
      /^No measured cable can be looked at: of Brackenfell and Quill the outer diameter was not measured; of Tollgate the resistance was not read\. The least nominal copper size that does is/,
    );
    const five = ['a', 'b', 'c', 'd', 'e'].map((name) => ({ name, text: lacking }));
    expect(runSentence(QUESTION, check, five)).toContain('of 5 of them the outer diameter');
    expect(runSentence(QUESTION, CHECK, left)).not.toContain('can be looked at');
  });

  it('names what was taken as usual', () => {
    const taken = usualTaken(
      { watts: true, peak: true, resting: 24 },
      { peakSeconds: true, efficiency: true, charging: true },
    );
    expect(taken).toEqual(['a peak of 30 s', 'an efficiency of 90 %', '28.4 V charging']);
    expect(runTable(QUESTION, CHECK, { taken }).replace(/\s+/g, ' ')).toContain(
      'Not stated, so taken as usual: a peak of 30 s, an efficiency of 90 % and 28.4 V charging.',
    );
  });

  it('of what cannot be answered says why, and nothing else', () => {
    const q = { ...QUESTION, supply: { ...QUESTION.supply, resting: 96 } };
    const text = runTable(q, runCheck(q, CABLES, []));
    expect(text).toMatch(/at most 60 V/);
    expect(text.split('\n').length).toBeLessThan(5);
  });

  it('says of a load too great for one run how many side by side do', () => {
    const q: RunQuestion = {
      ...QUESTION,
      load: { ...QUESTION.load, steady: 480 },
      length: 3,
      back: { kind: 'same cable', length: 3 },
    };
    const check = runCheck(q, CABLES.slice(0, 1), nominalSizes('awg', 353.15).slice(-2));
    const [, thin, thick] = check.answers;
    const sentence = runSentence(q, check);
    expect(sentence).toContain(
      `None of the measured cables surely meets volts and heat with one run; Brackenfell does with ${check.answers[0]!.parallel} side by side.`,
    );
    expect(thin!.parallel).toBe(thick!.parallel);
    expect(sentence).toContain(`; ${thin!.cable.name} does with ${thin!.parallel} side by side.`);
  });

  it('says how long each lasts under an overload where that is asked about', () => {
    const lasting = overloads(QUESTION, CHECK.answers, 250);
    for (const width of [60, 80, 100]) {
      const text = runTable(QUESTION, CHECK, { width, overloads: lasting });
      for (const line of text.split('\n')) expect(displayWidth(line), line).toBeLessThanOrEqual(width);
      expect(text.replace(/\s+/g, ' ')).toMatch(/Brackenfell comes to its 80 °C after [\d.]+ min at 250 A\./);
    }
    expect(runTable(QUESTION, CHECK, {})).not.toContain('Over-');
    expect(overloadText({ ...lasting[0]!, seconds: null })).toBe(
      'stays below its 80 °C at 250 A, for 6 hours at least.',
    );
  });

  it.each([
    [0, '0 s'],
    [89, '89 s'],
    [90, '1.5 min'],
    [596, '9.9 min'],
    [598, '10 min'],
    [7199, '120 min'],
    [9000, '2.5 h'],
  ])('%d s are %s', (seconds, text) => {
    expect(timeText(seconds)).toBe(text);
  });

  it('asks for the ohms of a body that keeps everything open', () => {
    const q: RunQuestion = { ...QUESTION, back: { kind: 'body unknown', low: 0.0003, high: 0.006 } };
    expect(runSentence(q, runCheck(q, CABLES, []))).toContain('measure them');
  });

  it('in its machine-readable form is plain JSON, temperatures in °C', () => {
    const json = JSON.parse(JSON.stringify(runJson(QUESTION, CHECK)));
    expect(json.cables).toHaveLength(11);
    expect(json.cables[0]).toMatchObject({ cable: 'a', measured: true, rating_C: 80, outcomes: { all: 'meets' } });
    expect(json.cables[0].resting.conductor_C.value).toBeGreaterThan(30);
    expect(json.cables[0].resting.conductor_C.value).toBeLessThan(80);
    expect(json.curves[0].points).toHaveLength(12);
    const wide = runJson(
      QUESTION,
      runCheck({ ...QUESTION, load: { ...QUESTION.load, kind: 'watts', steady: 9000 } }, CABLES, []),
    );
    expect(JSON.stringify(wide)).not.toMatch(/NaN|Infinity/);
  });
});
