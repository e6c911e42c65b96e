import { describe, expect, it } from 'vitest';
import { nominalCable, nominalSizes } from '../../src/methods/current/runCheck/nominal.ts';
import { overloads } from '../../src/methods/current/runCheck/overload.ts';
import { exactly, type RunQuestion } from '../../src/methods/current/runCheck/question.ts';
import { runCheck } from '../../src/methods/current/runCheck/runCheck.ts';
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
        'Brackenfell: one run cannot feed this load: more is asked for than can come through, nor do 6 side by side: no fuse.',
      );
    }
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
