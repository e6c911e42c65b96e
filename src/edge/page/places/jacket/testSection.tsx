import { useState } from 'preact/hooks';
import type { EnduranceTest, Jacket } from '../../../../findings/shapes/jacket.ts';
import { scaleNote } from '../../../../report/jacket/lastingAxis.ts';
import { lastingChart, perWallChart } from '../../../../report/jacket/lastingChart.ts';
import { lastingStrip } from '../../../../report/jacket/lastingStrip.ts';
import { testConditions } from '../../../../report/jacket/testConditions.ts';
import { variablesTheme } from '../../../../report/theme.ts';
import { noBreak } from '../../../../report/words/noBreak.ts';
import { capital } from '../../../../units/capital.ts';
import { Picture } from '../../parts/picture.tsx';
import { Switch } from '../../parts/switch.tsx';
import { useWidth } from '../../parts/useWidth.ts';
import { PAPER_WIDTH, printing } from '../../store/media.ts';
import { Curves } from './curves.tsx';

const FIRST_WIDTH = 1360;
const WIDEST = 1360;

/** One test: the order in words, what half of the pieces last, and every piece. */
export function TestSection({ test, jacket }: { test: EnduranceTest; jacket: Jacket }) {
  const [perWall, setPerWall] = useState(false);
  const [place, measuredWidth] = useWidth<HTMLDivElement>(FIRST_WIDTH);
  const width = Math.min(WIDEST, printing.value ? PAPER_WIDTH : measuredWidth);
  const walls = new Map(jacket.cables.flatMap((c) => (c.wall ? [[c.cable, c.wall.mean.value] as const] : [])));
  const per = perWallChart(test, walls);
  const shown = perWall && per !== null ? per : lastingChart(test);
  const amount = test.kind === 'amount';
  return (
    <section class="jacket-test">
      <header>
        <h2>
          <bdi dir="auto">{capital(test.test)}</bdi>{' '}
          <span class="unit">{noBreak(testConditions(test).join(', '))}</span>
        </h2>
        {per !== null && (
          <Switch
            legend={`What ${test.test} is counted in`}
            choices={[
              ['whole', test.unit, test.unit],
              ['per', 'per mm of wall', per.unit],
            ]}
            value={perWall ? 'per' : 'whole'}
            onChoose={(choice) => setPerWall(choice === 'per')}
          />
        )}
      </header>
      <p class="said">
        {noBreak((perWall && per !== null ? test.per_wall?.sentence : test.sentence) || aloneSentence(test))}
      </p>
      <div ref={place}>
        <h3 class="strip-title">{amount ? `What half of such pieces last, ${shown.unit}` : 'How many came through'}</h3>
        <Picture svg={lastingStrip(shown, { width, theme: variablesTheme })} />
      </div>
      <p class="note legend">
        {amount
          ? `${scaleNote(shown)} Bars hold what half of such pieces last 95 times in 100; the pieces stand below as dots, survivors open, because they would have gone on. `
          : 'Bars hold the share that would come through among many such pieces, 95 times in 100. '}
        {shown.rows.length < 2
          ? ''
          : shown.banded
            ? 'Cables behind one bracket cannot be parted.'
            : 'No line goes clean through this field; the sentence above says which cables were parted.'}
      </p>
      {test.notes.map((note) => (
        <p key={note} class="test-note">
          {noBreak(note)}
        </p>
      ))}
      {test.small_samples !== '' && <p class="small-samples">{noBreak(test.small_samples)}</p>}
      {amount && !perWall && <Curves test={test} />}
      {test.pairs.length > 0 && amount && !perWall && <Pairs test={test} />}
    </section>
  );
}

const aloneSentence = ({ cables }: EnduranceTest): string =>
  cables.length === 1 ? `One cable was tested: ${cables[0]!.text}` : '';

function Pairs({ test }: { test: EnduranceTest }) {
  const parted = test.pairs.filter((p) => p.parted).length;
  return (
    <details class="pairs">
      <summary>
        Pair by pair: {parted} of {test.pairs.length} parted
      </summary>
      <ul>
        {[...test.pairs]
          .sort((a, b) => Number(b.parted) - Number(a.parted))
          .map((pair) => (
            <li key={`${pair.a} ${pair.b}`}>
              {noBreak(pair.text)}
              {pair.pieces_to_part !== null && ` About ${pair.pieces_to_part} pieces of each would part them.`}
              {pair.why_no_pieces !== '' && ` ${pair.why_no_pieces}`}
            </li>
          ))}
      </ul>
    </details>
  );
}
