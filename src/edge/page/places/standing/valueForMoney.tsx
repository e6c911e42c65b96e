import type { Findings, Measured } from '../../../../findings/schema.ts';
import type { Decide, ValueForMoney as Value } from '../../../../findings/shapes/decide.ts';
import { moneyText } from '../../../../findings/standing/money.ts';
import { edgeChart } from '../../../../report/standing/edgeChart.ts';
import { edgePoints } from '../../../../report/standing/edgePoints.ts';
import { variablesTheme } from '../../../../report/theme.ts';
import { FigureOf } from '../../parts/figure.tsx';
import { Name } from '../../parts/name.tsx';
import { NOT_MEASURED } from '../../parts/notMeasured.tsx';
import { Picture } from '../../parts/picture.tsx';
import { useWidth } from '../../parts/useWidth.ts';
import { PAPER_WIDTH, printing } from '../../store/media.ts';
import { units } from '../../store/units.ts';
import { moneyFigure } from './moneyFigure.ts';

const FOOT = 0.3048;
/** Narrower than this a picture has no room for its names. px */
const LEAST_EDGE = 400;
const WIDEST_EDGE = 680;
const GAP = 48;
const FIRST_WIDTH = 1360;
const HEADS: Readonly<Record<string, string>> = {
  'price copper': 'Price against copper',
  'price resistance': 'Price against resistance',
  'stiffness wall': 'Stiffness against wall',
};

/** What the money buys, and the cables that no other beats in two things at once. */
export function ValueForMoney({ decide, findings }: { decide: Decide; findings: Findings | null }) {
  const priced = decide.value.filter((value) => value.price_per_m !== null);
  if (priced.length === 0 && decide.edges.length === 0) return null;
  return (
    <section class="worth-money">
      <h2>Value for money</h2>
      {priced.length === 0 ? (
        <p>No label has a price on record that gives money per metre.</p>
      ) : (
        <Prices values={decide.value} />
      )}
      {findings !== null && <Edges decide={decide} findings={findings} />}
    </section>
  );
}

function Prices({ values }: { values: readonly Value[] }) {
  const perFoot = units.value.perLength === 'ft';
  const length = perFoot ? 'foot' : 'metre';
  const times = perFoot ? FOOT : 1;
  const currencies = new Set(values.flatMap((v) => (v.price_per_m === null ? [] : [v.currency])));
  const [only] = currencies;
  const currency = currencies.size === 1 && only ? only : 'money';
  const own = ({ currency: of }: Value) => (currencies.size > 1 && of !== '' ? ` ${of}` : '');
  const figure = (m: Measured | null, by = 1) =>
    m === null ? NOT_MEASURED : <FigureOf text={moneyFigure(m, by)} unit={false} />;
  return (
    <table class="prices">
      <caption class="hidden">Prices against what was found</caption>
      <thead>
        <tr>
          <th scope="col">Cable</th>
          <th scope="col" class="number">
            {currency} per {length}
          </th>
          <th scope="col" class="number">
            … and mm² of
            <br />
            real copper
          </th>
          <th scope="col" class="number">
            for 1 m at
            <br />1 mΩ
          </th>
        </tr>
      </thead>
      <tbody>
        {values.map((value) => (
          <tr key={value.cable}>
            <th scope="row">
              <Name>{value.name || value.cable}</Name>
            </th>
            <td class="number" data-head={`${currency} per ${length}`}>
              {value.price_per_m === null ? NOT_MEASURED : `${moneyText(value.price_per_m * times)}${own(value)}`}
            </td>
            <td class="number" data-head="… and mm² of real copper">
              {figure(value.price_per_m_mm2, times)}
            </td>
            <td class="number" data-head="for 1 m at 1 mΩ">
              {figure(value.price_per_m_at_one_mohm)}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Edges({ decide, findings }: { decide: Decide; findings: Findings }) {
  const [place, measured] = useWidth<HTMLDivElement>(FIRST_WIDTH);
  const width = printing.value ? PAPER_WIDTH : measured;
  const drawn = decide.edges.flatMap((edge) => {
    const picture = edgePoints(edge, decide, findings);
    return picture ? [{ id: `${edge.a} ${edge.b}`, ...picture }] : [];
  });
  if (drawn.length === 0) return null;
  const across = Math.max(1, Math.min(drawn.length, Math.floor((width + GAP) / (LEAST_EDGE + GAP))));
  const each = Math.floor(Math.min(WIDEST_EDGE, (width - (across - 1) * GAP) / across));
  return (
    <div ref={place}>
      <div class="edges" style={{ gridTemplateColumns: `repeat(${across}, ${each}px)` }}>
        {drawn.map(({ id, points, axes }) => (
          <section key={id}>
            <h3>{HEADS[id] ?? `${axes.x.name} against ${axes.y.name.toLowerCase()}`}</h3>
            <Picture svg={edgeChart(points, axes, { width: each, theme: variablesTheme })} />
          </section>
        ))}
      </div>
      <p class="note">
        Solid: no other cable is as good in both and better in one. Open: another one is. Bars hold the true value 95
        times in 100. Between two cables the dashed step claims nothing.
      </p>
    </div>
  );
}
