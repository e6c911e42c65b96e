import type { CableFindings } from '../../../../findings/schema.ts';
import { sectionDrawing } from '../../../../report/section/sectionDrawing.ts';
import { type SectionInput, sectionInput } from '../../../../report/section/sectionInput.ts';
import { reach, sectionRadii } from '../../../../report/section/sectionRadii.ts';
import { variablesTheme } from '../../../../report/theme.ts';
import { noBreak } from '../../../../report/words/noBreak.ts';
import { quantityWords } from '../../../../trial/plainWords.ts';
import { chartOf } from '../../parts/chartOf.ts';
import { Figure } from '../../parts/figure.tsx';
import { gaugeWords } from '../../parts/gaugeWords.ts';
import { IntervalAxis, IntervalRow } from '../../parts/intervals.tsx';
import { contradicts } from '../../parts/noArea.ts';
import { HeadlineOutcome } from '../../parts/outcomeWord.tsx';
import { Picture } from '../../parts/picture.tsx';
import { Trouble } from '../../parts/trouble.tsx';
import { useWidth } from '../../parts/useWidth.ts';
import { blankFieldSentences } from '../../store/blankFields.ts';
import { readsOnly } from '../../store/devices.ts';
import { fields, quickAnswer, troubles } from '../../store/sixFields.ts';
import { units } from '../../store/units.ts';
import { KeepCable } from './keepCable.tsx';

/** Diameter that the one drawing is fitted to, px. */
const DRAWN = 230;

/** The answer about one cable: cut face, sentence, figures, and what each blank field costs. */
export function QuickAnswer() {
  const now = quickAnswer.value;
  const cable = now.findings?.cables[0] ?? null;
  if (now.sentence !== '') {
    return (
      <div class="answer">
        <Trouble>{now.sentence}</Trouble>
      </div>
    );
  }
  if (cable === null) return <NothingYet />;
  return (
    <div class="answer" aria-busy={now.busy}>
      <Face cable={cable} />
      <p class="said" aria-live="polite">
        {noBreak(cable.sentence)}
      </p>
      {cable.conductor_area !== null && <KeyFigures cable={cable} />}
      {cable.conductor_area !== null && <OneInterval cable={cable} />}
      <Blanks cable={cable} />
      {!readsOnly.value && <KeepCable />}
    </div>
  );
}

/** Before anything was typed: what each reading will settle. */
function NothingYet() {
  return (
    <div class="answer">
      <p class="said">The answer stands here as soon as there is a label and one reading.</p>
      <dl class="figures settles">
        <div>
          <dt>Label, mass and length</dt>
          <dd>whether the piece can hold the label’s copper at all</dd>
        </div>
        <div>
          <dt>With ohms and contacts</dt>
          <dd>which metal it is, and its area to a few per cent</dd>
        </div>
        <div>
          <dt>With the temperature</dt>
          <dd>the same, no longer blurred by a warm or cold bench</dd>
        </div>
      </dl>
    </div>
  );
}

function Face({ cable }: { cable: CableFindings }) {
  const input = sectionInput(cable);
  return (
    <div class="drawing">
      <Picture
        svg={sectionDrawing(input, { scalePxPerMm: scaleFor(input), theme: variablesTheme, showTicks: true }).svg}
      />
    </div>
  );
}

/** A whole number of px per mm that fits the drawing's room. */
function scaleFor(input: SectionInput): number {
  const radius = reach(sectionRadii(input));
  return radius === null ? 1 : Math.max(1, Math.floor(DRAWN / (2 * radius)));
}

function KeyFigures({ cable }: { cable: CableFindings }) {
  return (
    <dl class="key">
      <div>
        <dt>Metal area</dt>
        <dd>{cable.conductor_area === null ? '–' : <Figure of={cable.conductor_area} />}</dd>
      </div>
      <div>
        <dt>Of the label’s copper</dt>
        <dd>{cable.copper_of_claim === null ? '–' : <Figure of={cable.copper_of_claim} percent />}</dd>
      </div>
      <div>
        <dt>Gauge</dt>
        <dd class="words">{gaugeWords(cable) ?? '–'}</dd>
      </div>
      <div>
        <dt>Metal</dt>
        <dd class="words">{cable.metal_found ?? 'not settled'}</dd>
      </div>
      <div>
        <dt>Against the label</dt>
        <dd class="words">
          <HeadlineOutcome cable={cable} />
        </dd>
      </div>
    </dl>
  );
}

/** Width of the bar before it has been measured, px. */
const FIRST_BAR = 354;

/** The area with its interval, against the limit of the label. */
function OneInterval({ cable }: { cable: CableFindings }) {
  const [place, width] = useWidth<HTMLDivElement>(FIRST_BAR);
  const chart = chartOf([cable], width, units.value);
  return (
    <div class="bar" ref={place}>
      <IntervalAxis chart={chart} />
      <IntervalRow chart={chart} cable={cable} />
    </div>
  );
}

/** What the blank fields cost, what would help most, and what was assumed about the tools. */
function Blanks({ cable }: { cable: CableFindings }) {
  const blanks = blankFieldSentences(
    fields.value,
    units.value,
    new Set(Object.keys(troubles.value) as (keyof typeof fields.value)[]),
  );
  return (
    <>
      {blanks.length > 0 && (
        <ul class="notes">
          {blanks.map((sentence) => (
            <li key={sentence}>{noBreak(sentence)}</li>
          ))}
        </ul>
      )}
      {contradicts(cable) && (
        <p>
          <b>Take again: {quantityWords(cable.consistency!.recheck!)}.</b>
        </p>
      )}
      {cable.next_reading !== null && cable.conductor_area !== null && (
        <p>
          <b>One more measurement.</b> {noBreak(cable.next_reading.text)}
        </p>
      )}
      {cable.assumed.length > 0 && (
        <details>
          <summary>What was assumed about your tools</summary>
          <ul class="notes note">
            {cable.assumed.map((line) => (
              <li key={line}>{noBreak(line)}</li>
            ))}
          </ul>
        </details>
      )}
    </>
  );
}
