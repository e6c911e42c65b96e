import type { ComponentChildren } from 'preact';
import type { RunAnswer } from '../../../../../methods/current/runCheck/answer.ts';
import type { Between } from '../../../../../methods/current/runCheck/question.ts';
import { ZERO_CELSIUS } from '../../../../../units/dimension.ts';
import { Name } from '../../../parts/name.tsx';
import { narrow, printing } from '../../../store/media.ts';

interface Column {
  id: string;
  head: string;
  unit: string;
  cell: (a: RunAnswer) => ComponentChildren;
}

const NONE = '—';
const shifted = ({ value, low, high }: Between, by: number): Between => ({
  value: value + by,
  low: low + by,
  high: high + by,
});
const scaled = ({ value, low, high }: Between, by: number): Between => ({
  value: value * by,
  low: low * by,
  high: high * by,
});
/** Without the minus sign of a figure that rounds to nothing. */
const number = (x: number, decimals: number) =>
  Number.isFinite(x)
    ? x
        .toFixed(decimals)
        .replace(/^-(?=0*\.?0*$)/, '')
        .replace('-', '−')
    : NONE;

/** `95 to 154`; an end that nobody knows is open. */
function endsText(low: string, high: string): string {
  if (low === NONE) return `${high} or less`;
  return high === NONE ? `${low} or more` : `${low} to ${high}`;
}

/** The middle, and the ends of all doubts together below it; `unfed` where at the far end nothing comes through at all. */
function Ends({ of, decimals, unfed = '' }: { of: Between; decimals: number; unfed?: string }) {
  const [low, high] = [number(of.low, decimals), number(of.high, decimals)];
  if (unfed !== '')
    return (
      <span class="ends">
        <b>{number(of.value, decimals)}</b>
        <span>{unfed}</span>
        <span>or not fed</span>
      </span>
    );
  return (
    <span class="ends">
      <b>{number(of.value, decimals)}</b>
      {low !== high && <span>{endsText(low, high)}</span>}
    </span>
  );
}

/** Left at the load; an end of 0 V is none that anything runs at. */
function AtLoad({ of: { resting } }: { of: RunAnswer }) {
  const unfed = resting.fails === 'not enough volts' ? `up to ${number(resting.atLoad.high, 2)}` : '';
  return <Ends of={resting.atLoad} decimals={2} unfed={unfed} />;
}

/** Lost on the way; an end of 100 % is one where nothing is fed. */
function Lost({ of: { drop, feeds } }: { of: RunAnswer }) {
  const share = scaled(drop, 100);
  const unfed = feeds === 'not settled' ? `from ${number(share.low, 1)}` : '';
  return <Ends of={share} decimals={1} unfed={unfed} />;
}

const COLUMNS: readonly Column[] = [
  { id: 'settled', head: 'Volts, heat', unit: '', cell: (a) => <Outcomes of={a} /> },
  { id: 'load', head: 'At the load', unit: 'V', cell: (a) => <AtLoad of={a} /> },
  { id: 'lost', head: 'Lost', unit: '%', cell: (a) => <Lost of={a} /> },
  { id: 'watts', head: 'Mean', unit: 'W lost', cell: (a) => number(a.resting.watts.value, 0) },
  {
    id: 'heat',
    head: 'Hottest',
    unit: '°C',
    cell: (a) => <Ends of={shifted(a.hottest, -ZERO_CELSIUS)} decimals={0} />,
  },
  { id: 'margin', head: 'Margin', unit: 'K', cell: (a) => <Ends of={a.margin} decimals={0} /> },
  { id: 'carries', head: 'Carries', unit: 'A', cell: (a) => <Ends of={a.carrying} decimals={0} /> },
];
/** Of as many runs as do. */
const TOGETHER: readonly Column[] = [
  { id: 'runs', head: 'Runs', unit: '', cell: (a) => (a.parallel === null ? 'none' : String(a.parallel)) },
  {
    id: 'fuse',
    head: 'Fuse',
    unit: 'A',
    cell: (a) => (a.fuseEach === null ? NONE : (a.fuseEach.rating ?? 'none fits')),
  },
  { id: 'mass', head: 'Mass', unit: 'kg', cell: (a) => (a.mass === null ? NONE : a.mass.toFixed(2)) },
  {
    id: 'cost',
    head: 'Cost',
    unit: '',
    cell: (a) => (a.cost === null ? NONE : `${a.cost.amount.toFixed(2)} ${a.cost.currency}`.trim()),
  },
];

function Outcomes({ of: { outcomes, feeds, tooHot } }: { of: RunAnswer }) {
  const word = (outcome: string, what: string) => (
    <span class={outcome === 'not settled' ? 'open' : ''}>
      {outcome} <span class="unit">{what}</span>
    </span>
  );
  if (tooHot) return <span class="run-outcome">surroundings too hot</span>;
  if (feeds === 'no' || outcomes.heat === null) return <span class="run-outcome">cannot feed this load</span>;
  const starved = feeds === 'not settled' && <span class="open">may not feed it</span>;
  if (outcomes.drop === outcomes.heat)
    return (
      <span class="run-outcome">
        {word(outcomes.drop, outcomes.drop === 'meets' ? 'both' : 'on both')}
        {starved}
      </span>
    );
  return (
    <span class="run-outcome">
      {word(outcomes.drop, 'on volts')}
      {word(outcomes.heat, 'on heat')}
      {starved}
    </span>
  );
}

/** Every cable in the run: measured ones first, nominal sizes below them for reference. */
export function RunTable({ answers }: { answers: readonly RunAnswer[] }) {
  const measured = answers.filter((a) => a.cable.measured);
  const nominal = answers.filter((a) => !a.cable.measured);
  const together = TOGETHER.filter(
    ({ id }) =>
      (id !== 'cost' || measured.some((a) => a.cost !== null)) &&
      (id !== 'mass' || answers.some((a) => a.mass !== null)),
  );
  const columns = [...COLUMNS, ...together];
  if (narrow.value && !printing.value) return <Blocks measured={measured} nominal={nominal} columns={columns} />;
  return (
    <table class="cables run-table">
      <caption class="hidden">Volts, heat and fuse with every cable</caption>
      <colgroup>
        <col class="run-name" />
        {columns.map(({ id }) => (
          <col key={id} class={`run-${id}`} />
        ))}
      </colgroup>
      <thead>
        <tr class="run-groups">
          <td />
          <th scope="colgroup" colSpan={COLUMNS.length}>
            One run by itself
          </th>
          <th scope="colgroup" colSpan={together.length}>
            As many as do
          </th>
        </tr>
        <tr>
          <th scope="col">Cable</th>
          {columns.map(({ id, head, unit }) => (
            <th key={id} scope="col" class={`${id === 'settled' ? '' : 'number'} run-${id}`}>
              {head}
              {unit !== '' && <br />}
              {unit}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {measured.map((a) => (
          <Row key={a.cable.id} answer={a} columns={columns} />
        ))}
        {nominal.length > 0 && (
          <tr class="nominal-head">
            <th scope="rowgroup" colSpan={columns.length + 1}>
              Nominal copper sizes, for reference
            </th>
          </tr>
        )}
        {nominal.map((a) => (
          <Row key={a.cable.id} answer={a} columns={columns} />
        ))}
      </tbody>
    </table>
  );
}

/** Heads that lean on the group above them in the table. */
const IN_BLOCKS: Readonly<Record<string, string>> = {
  runs: 'Runs that do',
  fuse: 'Fuse each',
  mass: 'Mass of them',
  cost: 'Cost of them',
};

/** Figures of what comes through are a dash where nothing does. */
const FED = new Set(['load', 'lost', 'watts', 'heat', 'margin']);
const shown = (id: string, cell: Column['cell'], a: RunAnswer) => (a.feeds === 'no' && FED.has(id) ? NONE : cell(a));

function Row({ answer, columns }: { answer: RunAnswer; columns: readonly Column[] }) {
  return (
    <tr class={answer.cable.measured ? '' : 'nominal'}>
      <th scope="row">
        <Name>{answer.cable.name || answer.cable.id}</Name>
      </th>
      {columns.map(({ id, cell }) => (
        <td key={id} class={`${id === 'settled' ? '' : 'number'} run-${id}`}>
          {shown(id, cell, answer)}
        </td>
      ))}
    </tr>
  );
}

interface BlocksProps {
  measured: readonly RunAnswer[];
  nominal: readonly RunAnswer[];
  columns: readonly Column[];
}

function Blocks({ measured, nominal, columns }: BlocksProps) {
  const block = (a: RunAnswer) => (
    <li key={a.cable.id}>
      <h3>
        <Name>{a.cable.name || a.cable.id}</Name>
      </h3>
      <dl class="figures">
        {columns
          .map(({ id, head, unit, cell }) => ({
            id,
            name: `${IN_BLOCKS[id] ?? head} ${unit}`,
            text: shown(id, cell, a),
          }))
          .filter(({ text }) => text !== NONE)
          .map(({ id, name, text }) => (
            <div key={id}>
              <dt>{name}</dt>
              <dd>{text}</dd>
            </div>
          ))}
      </dl>
    </li>
  );
  return (
    <>
      {measured.length > 0 && <ul class="blocks run-blocks">{measured.map(block)}</ul>}
      {nominal.length > 0 && (
        <details class="nominal-fold">
          <summary>Nominal copper sizes, for reference</summary>
          <ul class="blocks run-blocks">{nominal.map(block)}</ul>
        </details>
      )}
    </>
  );
}
