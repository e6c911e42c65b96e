import '../../styles/film.css';
import { useEffect } from 'preact/hooks';
import type { CableFindings } from '../../../../findings/schema.ts';
import { figureText, measuredText } from '../../../../report/figures.ts';
import { copperInOtherMetal, otherMetal } from '../../../../report/otherMetal.ts';
import { sectionDrawing } from '../../../../report/section/sectionDrawing.ts';
import { sectionInput } from '../../../../report/section/sectionInput.ts';
import { reach, sectionRadii } from '../../../../report/section/sectionRadii.ts';
import { variablesTheme } from '../../../../report/theme.ts';
import { noBreak } from '../../../../report/words/noBreak.ts';
import { pieceSign, quantityHead } from '../../../../trial/plainWords.ts';
import type { Reading } from '../../../../trial/trial.ts';
import { typedText } from '../../../../units/typedText.ts';
import { Name } from '../../parts/name.tsx';
import { Picture } from '../../parts/picture.tsx';
import { type Assay, assay, followTrial } from '../../store/assay.ts';
import { folded } from '../../store/journal/journal.ts';
import { addressOf } from '../../store/routeOf.ts';
import { units } from '../../store/units.ts';

export const GROUNDS = ['film', 'film-key', 'film-clear'] as const;
export type Ground = (typeof GROUNDS)[number];

const GROUND_WORDS: Readonly<Record<Ground, string>> = {
  film: 'Plain ground',
  'film-key': 'One colour, to be keyed out',
  'film-clear': 'No ground',
};

/** Radius that the largest jacket fills, px. */
const FACE = 210;

/** A second screen that follows the bench: the last reading large, the cable it is of, the table so far. By codes until the reveal. */
export function Film({ trial, ground }: { trial: string; ground: Ground }) {
  useEffect(() => followTrial(trial), [trial]);
  useEffect(() => {
    document.documentElement.dataset.ground = ground;
    return () => {
      delete document.documentElement.dataset.ground;
    };
  }, [ground]);
  useEffect(() => {
    document.title = 'Film · Cupel';
  }, []);
  const now = assay.value?.trial === trial ? assay.value : null;
  const last = lastCounted(now?.readings ?? []);
  const cables = (now?.findings?.cables ?? []).filter(({ role }) => role === 'compared');
  const cable = cables.find((one) => one.cable === last?.cable) ?? cables[0];
  return (
    <main class="film" tabIndex={-1}>
      <h1 class="hidden">What is read at the bench</h1>
      {last === null ? <p class="film-what">{nothingYet(now)}</p> : <Last reading={last} blind={now?.blind ?? false} />}
      <div class="film-desk">
        {cable !== undefined && <Face cable={cable} cables={cables} />}
        <SoFar cables={cables} here={cable?.cable ?? ''} />
      </div>
      <nav class="film-grounds" aria-label="Ground">
        {GROUNDS.map((each) => (
          <a
            key={each}
            href={addressOf({ place: 'publish', trial, opened: each })}
            aria-current={each === ground ? 'true' : undefined}
          >
            {GROUND_WORDS[each]}
          </a>
        ))}
        <a href={addressOf({ place: 'publish', trial, opened: null })}>Back to Publish</a>
      </nav>
    </main>
  );
}

function nothingYet(now: Assay | null): string {
  if (now?.stage === 'failed') return now.sentence;
  return now?.findings == null ? 'Reading the trial.' : 'Nothing has been read yet.';
}

/** The reading that was said last; what was struck or replaced is passed over. */
function lastCounted(readings: readonly Reading[]): Reading | null {
  const counted = readings.filter(({ standing }) => standing === 'counted');
  return counted.reduce<Reading | null>(
    (last, each) => (last === null || each.entry >= last.entry ? each : last),
    null,
  );
}

function Last({ reading, blind }: { reading: Reading; blind: boolean }) {
  const { specimen, quantity, row } = reading;
  // By codes, readings bear the signs of their pieces already.
  const sign = blind || folded.value === null ? specimen : pieceSign(folded.value, specimen);
  return (
    <div class="film-last" aria-live="polite">
      <p class="film-what">
        {quantityHead(quantity)}, <bdi dir="auto">{sign}</bdi>
      </p>
      <p class="film-value">{noBreak(typedText(row.value ?? '', row.unit ?? ''))}</p>
    </div>
  );
}

function Face({ cable, cables }: { cable: CableFindings; cables: readonly CableFindings[] }) {
  const largest = Math.max(...cables.map((one) => reach(sectionRadii(sectionInput(one))) ?? 0), 1);
  const { svg } = sectionDrawing(sectionInput(cable), {
    scalePxPerMm: FACE / largest,
    theme: variablesTheme,
    weight: 2,
  });
  return (
    <div class="film-face">
      <Picture svg={svg} />
      <p>
        <Name>{cable.name || cable.cable}</Name>
      </p>
    </div>
  );
}

function SoFar({ cables, here }: { cables: readonly CableFindings[]; here: string }) {
  if (cables.length === 0) return null;
  return (
    <table class="film-table" style={{ '--film-rows': cables.length + 1 }}>
      <thead>
        <tr>
          <th scope="col">Cable</th>
          <th scope="col" class="number">
            Metal area
          </th>
        </tr>
      </thead>
      <tbody>
        {cables.map((cable) => {
          const { value, plusMinus, unit } = figureText(cable.conductor_area, units.value);
          return (
            <tr key={cable.cable} class={cable.cable === here ? 'here' : undefined}>
              <th scope="row">
                <Name>{cable.name || cable.cable}</Name>
              </th>
              <td class="number">
                {cable.conductor_area === null ? (
                  'to come'
                ) : (
                  <>
                    <b>{value}</b> {noBreak(`${plusMinus === '' ? '' : `± ${plusMinus} `}${unit}`)}
                    <OtherMetal cable={cable} />
                  </>
                )}
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}

/** Below an area that is not copper: which metal it is, and how much copper is in it. */
function OtherMetal({ cable }: { cable: CableFindings }) {
  const metal = otherMetal(cable);
  const copper = copperInOtherMetal(cable);
  if (metal === '') return null;
  return (
    <small class="film-metal">
      {metal}
      {copper !== null && `, ${noBreak(measuredText(copper, units.value))} of it copper`}
    </small>
  );
}
