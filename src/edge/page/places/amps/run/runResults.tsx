import { useEffect, useMemo, useState } from 'preact/hooks';
import { cautionsFor } from '../../../../../methods/current/cautions.ts';
import type { RunAnswer } from '../../../../../methods/current/runCheck/answer.ts';
import type { RunQuestion } from '../../../../../methods/current/runCheck/question.ts';
import type { RunCheck } from '../../../../../methods/current/runCheck/runCheck.ts';
import { dropStrip, heatStrip, runCharts } from '../../../../../report/amps/ampsPictures.ts';
import { type LengthChart, lengthChart } from '../../../../../report/amps/lengthChart.ts';
import { noneFitsText } from '../../../../../report/runInTheWay.ts';
import { fuseText } from '../../../../../report/runWords.ts';
import { variablesTheme } from '../../../../../report/theme.ts';
import { noBreak } from '../../../../../report/words/noBreak.ts';
import { Minds } from '../../../parts/mind.tsx';
import { Name } from '../../../parts/name.tsx';
import { Picture } from '../../../parts/picture.tsx';
import { useWidth } from '../../../parts/useWidth.ts';
import { asUnderstood } from '../../../store/amps/running.ts';
import { shownLength } from '../../../store/amps/runQuestion.ts';
import { PAPER_WIDTH, printing } from '../../../store/media.ts';
import { Strip } from '../amperes.tsx';
import { Overloads } from './overloads.tsx';
import { ProfileAnswers } from './profileAnswers.tsx';
import { RunTable } from './runTable.tsx';

interface ResultsProps {
  question: RunQuestion;
  check: RunCheck;
  missing: readonly { cable: string; name: string; text: string }[];
}

/** Strips, curves, table and fuses of a run that can be answered. */
export function RunResults({ question, check, missing }: ResultsProps) {
  const measured = check.answers.filter((a) => a.cable.measured);
  const unit = asUnderstood.value.lengthUnit === 'ft' ? 'ft' : 'm';
  const rested = useRested(check);
  // The same element while the slider moves: nothing of it is gone through again.
  const atRest = useMemo(() => <AtRest check={rested} missing={missing} />, [rested, missing, printing.value]);
  const charts = runCharts(question, check, { unit, of: (metres) => shownLength(asUnderstood.value, metres) });
  return (
    <>
      {measured.length > 0 && (
        <div class="run-strips">
          <Strip
            title="Lost on the way"
            unit="% of the supply, at the peak of the load"
            strip={dropStrip(question, check)}
          />
          <Strip title="Hottest conductor" unit="°C" strip={heatStrip(check)} />
        </div>
      )}
      <div class="run-charts">
        <Lengths title="Lost, by the length of the run" chart={charts.drop} />
        <Lengths title="Hottest, by the length of the run" chart={charts.heat} />
      </div>
      <p class="note legend">
        Bars hold every doubt together: ohms, joints, the way back, how the cable gives off heat. Copper lines are
        measured cables, dashed ones nominal sizes. A cable meets where its whole bar lies below the line, falls short
        where all of it lies above, and is not settled in between.
      </p>
      {atRest}
    </>
  );
}

/** ms without a move after which the table follows; strips and curves follow at once. */
const REST = 80;

/** The check as it was when nothing had moved for a moment. */
function useRested(check: RunCheck): RunCheck {
  const [rested, setRested] = useState(check);
  useEffect(() => {
    const wait = setTimeout(() => setRested(check), REST);
    return () => clearTimeout(wait);
  }, [check]);
  return rested;
}

/** What is read when the slider stands: the table, what was left out, fuses, cautions. */
function AtRest({ check, missing }: Pick<ResultsProps, 'check' | 'missing'>) {
  const measured = check.answers.filter((a) => a.cable.measured);
  return (
    <>
      <h2 class="run-head-two">Cable by cable</h2>
      <RunTable answers={check.answers} />
      <p class="note legend">
        At the load, lost and hottest are of one run at the peak of the load; margin is how far that stays below the
        rating; mean W lost is over the whole duty, peaks and all, from the supply at rest. Carries: what one run bears
        for ever in these surroundings. Runs: how many side by side meet both; fuse, mass and cost are of so many. Fuse:
        in each run, the least standard rating that holds its share of the load and that it bears, looked up from memory
        of the standard: read the sheet of the fuse that you buy.
      </p>
      {missing.length > 0 && (
        <p class="note">
          Left out:{' '}
          {missing.map((m, i) => (
            <span key={m.cable}>
              {i > 0 && '; '}
              <Name>{m.name || m.cable}</Name>, because {m.text}
            </span>
          ))}
          .
        </p>
      )}
      <Fuses measured={measured} nominal={check.answers.filter((a) => !a.cable.measured)} />
      <Overloads />
      <ProfileAnswers />
      <Cautions measured={measured} />
    </>
  );
}

const FIRST_WIDTH = 480;
const HEIGHT = 270;
/** So that strips and curves stand on one page. */
const PAPER_HEIGHT = 150;
/** Two beside each other on paper. */
const PAPER_CHART = (PAPER_WIDTH - 24) / 2;

function Lengths({ title, chart }: { title: string; chart: LengthChart }) {
  const [place, measuredWidth] = useWidth<HTMLDivElement>(FIRST_WIDTH);
  const width = printing.value ? PAPER_CHART : measuredWidth;
  return (
    <section ref={place}>
      <h2 class="strip-title">{title}</h2>
      <Picture
        svg={lengthChart(chart, { width, height: printing.value ? PAPER_HEIGHT : HEIGHT, theme: variablesTheme })}
      />
    </section>
  );
}

function Fuses({ measured, nominal }: { measured: readonly RunAnswer[]; nominal: readonly RunAnswer[] }) {
  const fused = measured.filter((a) => !a.tooHot);
  const whys = nominal.map(noneFitsText).filter((text) => text !== '');
  if (fused.length === 0 && whys.length === 0) return null;
  return (
    <section class="run-fuses" aria-labelledby="run-fuses">
      <h2 id="run-fuses">Fuse</h2>
      <ul>
        {fused.map((a) => (
          <li key={a.cable.id}>
            <Name>{a.cable.name || a.cable.id}</Name>: {noBreak(fuseText(a))}
          </li>
        ))}
      </ul>
      {whys.length > 0 && (
        <details>
          <summary>Nominal sizes that no number of runs or no fuse fits</summary>
          <ul>
            {whys.map((text) => (
              <li key={text}>{noBreak(text)}</li>
            ))}
          </ul>
        </details>
      )}
      <Minds texts={cautionsFor('fuse')} />
    </section>
  );
}

function Cautions({ measured }: { measured: readonly RunAnswer[] }) {
  const clad = measured.some((a) => /aluminium/.test(a.cable.heated.metal.name));
  return (
    <section class="amps-cautions" aria-labelledby="run-cautions">
      <h2 id="run-cautions">Mind</h2>
      <ul>
        {cautionsFor('run check', 'terminals', ...(clad ? (['clad aluminium'] as const) : [])).map((text) => (
          <li key={text}>{noBreak(text)}</li>
        ))}
      </ul>
    </section>
  );
}
