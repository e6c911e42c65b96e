import type { ComponentChildren } from 'preact';
import { copperClaim, metalClaim, sizeClaim, withoutClaim } from '../../../../findings/cableOutcome.ts';
import type { CableFindings, Measured } from '../../../../findings/schema.ts';
import type { DisplayUnits } from '../../../../units/display.ts';
import { columnFigures } from '../../parts/columnFigures.ts';
import { FigureOf, unitHead } from '../../parts/figure.tsx';
import { gaugeFigure, gaugeWords } from '../../parts/gaugeWords.ts';
import { contradicts, noAreaWords } from '../../parts/noArea.ts';
import { OutcomeWord } from '../../parts/outcomeWord.tsx';

/** One column of the table of cables; the same list gives the lines of a block where there is no room for a table. */
export interface Column {
  /** Names the column in the style sheet. */
  id: string;
  head: string;
  /** Second line of the head: the unit, or empty. */
  unit: string;
  number: boolean;
  /** One cell per cable, in the order of the cables. */
  cells: ComponentChildren[];
}

/** The columns for these cables in the units that were chosen; `area` stands before the chart, `rest` after it. */
export function columnsFor(cables: readonly CableFindings[], units: DisplayUnits): { area: Column; rest: Column[] } {
  // Areas in one column, gauges in another: whichever was chosen stands first.
  const inMetric: DisplayUnits = { ...units, area: 'mm2' };
  const figures = (
    id: string,
    head: string,
    unit: string,
    of: (cable: CableFindings) => Measured | null,
    percent = false,
  ): Column => ({
    id,
    head,
    unit,
    number: true,
    cells: columnFigures(cables.map(of), inMetric, percent).map((text, index) =>
      text === null ? <NoFigure cable={cables[index]!} /> : <FigureOf text={text} unit={false} />,
    ),
  });
  const words = (id: string, head: string, cell: (cable: CableFindings) => ComponentChildren): Column => ({
    id,
    head,
    unit: '',
    number: false,
    cells: cables.map(cell),
  });
  const area = withContradictions(
    cables,
    figures('area', 'Metal area', unitHead('mm2', inMetric), (cable) => cable.conductor_area),
  );
  const gauge = gaugeColumn(cables, units);
  const byGauge = units.area === 'awg';
  return {
    area: byGauge ? { ...gauge, head: 'Metal area' } : area,
    rest: [
      byGauge ? { ...area, head: 'Area' } : gauge,
      withCopperOutcome(
        cables,
        figures('copper', 'Of the label’s', 'copper, %', (cable) => cable.copper_of_claim, true),
      ),
      words('size', 'Size claim', sizeCell),
      words('metal', 'Metal found', (cable) => cable.metal_found ?? <span class="unknown">not settled</span>),
      words('metal-claim', 'Metal claim', metalCell),
      figures(
        'ohms',
        'Resistance',
        `${unitHead('mohm/m', units)} at ${units.temperature === 'F' ? '68\u00a0°F' : '20\u00a0°C'}`,
        (cable) => cable.resistance_20C,
      ),
      figures('wall', 'Wall', unitHead('mm', units), (cable) => cable.wall?.mean ?? null),
      figures('section', 'Metal in', 'section, %', (cable) => cable.metal_of_section, true),
    ],
  };
}

/** Where the readings contradict each other, the column of areas says so and what to take again. */
function withContradictions(cables: readonly CableFindings[], column: Column): Column {
  const cells = column.cells.map((cell, index) =>
    contradicts(cables[index]!) ? <span class="unknown gauge-words">{noAreaWords(cables[index]!)}</span> : cell,
  );
  return { ...column, cells };
}

/** Below each share of the label's copper, what came of that claim: the outcome that the page's sentence counts. */
function withCopperOutcome(cables: readonly CableFindings[], column: Column): Column {
  const cells = column.cells.map((cell, index) => {
    const claim = copperClaim(cables[index]!);
    if (claim === null || claim.outcome === null) return cell;
    return (
      <>
        {cell}
        <span class="below">
          <OutcomeWord claim={claim} />
        </span>
      </>
    );
  });
  return { ...column, cells };
}

/** The gauge as a number with its ± down to 1; above that the trade's own words, because a gauge of −0.4 says nothing to anybody. */
function gaugeColumn(cables: readonly CableFindings[], units: DisplayUnits): Column {
  const texts = columnFigures(cables.map(gaugeFigure), { ...units, area: 'awg' });
  const cells = cables.map((cable, index) => {
    const text = texts[index];
    if (text != null) return <FigureOf text={text} unit={false} />;
    const words = gaugeWords(cable);
    return words === null ? <NoFigure cable={cable} /> : <span class="gauge-words">{words}</span>;
  });
  return { id: 'gauge', head: 'Gauge', unit: 'AWG', number: true, cells };
}

function sizeCell(cable: CableFindings): ComponentChildren {
  const claim = sizeClaim(cable);
  if (claim !== null) return <OutcomeWord claim={claim} />;
  return <span class="unknown">{cable.label.vague ? vagueWords(cable) : noClaimWords(cable, cable.label.size)}</span>;
}

/** A label that names no standard, or of which no size can be read. */
const vagueWords = ({ label }: CableFindings) =>
  label.claimed_area_mm2 === null ? 'no size to read' : 'label is vague';

/** In the place of an outcome: nothing was measured yet, or the label says nothing. */
const noClaimWords = (cable: CableFindings, claimed: string) =>
  claimed !== '' && cable.claims.length === 0 ? withoutClaim(cable) : 'none';

function metalCell(cable: CableFindings): ComponentChildren {
  const claim = metalClaim(cable);
  return claim === null ? (
    <span class="unknown">{noClaimWords(cable, cable.label.metal)}</span>
  ) : (
    <OutcomeWord claim={claim} copperShare={cable.copper_share?.value ?? null} />
  );
}

/** A dash where there is no figure; what it means is said aloud. */
function NoFigure({ cable }: { cable: CableFindings }) {
  return (
    <span class="unknown">
      <span aria-hidden="true">–</span>
      <span class="hidden">
        {contradicts(cable) ? 'not given: the readings contradict each other' : 'not measured'}
      </span>
    </span>
  );
}
