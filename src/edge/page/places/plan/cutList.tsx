import { useState } from 'preact/hooks';
import { specimenRow } from '../../../../findings/plan/cablePieces.ts';
import type { CablePlan } from '../../../../findings/plan.ts';
import { PURPOSES } from '../../../../report/labels/pieceLabels.ts';
import { lengthWords } from '../../../../report/words/lengthWords.ts';
import type { Trial } from '../../../../trial/trial.ts';
import type { DisplayUnits } from '../../../../units/display.ts';
import { AsideList } from '../../parts/asideList.tsx';
import { Name } from '../../parts/name.tsx';
import { PutAside } from '../../parts/putAside.tsx';
import { say } from '../../store/journal/journal.ts';
import { correctRow, type Row } from '../../store/plan/correct.ts';
import type { Planned } from '../../store/plan/planned.ts';
import { units } from '../../store/units.ts';
import { PlanSection } from './planSection.tsx';

/** What to cut from each cable, from which piece, how much cable that takes and what it costs. */
export function CutList({ trial, laid }: { trial: Trial; laid: Planned | null }) {
  const plan = laid?.plan ?? null;
  if (plan === null || plan.cables.length === 0) return null;
  const proposed = plan.cables.flatMap(({ pieces }) => pieces.filter(({ onRecord }) => !onRecord));
  const pieces = plan.cables.reduce((sum, cable) => sum + cable.pieces.length, 0);
  return (
    <PlanSection
      id="cutting"
      class="cut-list"
      title="Cut list"
      state={proposed.length === 0 ? `${pieces} pieces, on record` : `${proposed.length} of ${pieces} pieces proposed`}
      next={proposed.length > 0}
    >
      <p class="note">
        Lengths follow from the size claimed, the tools and the methods. A piece to take apart comes out of a bent one
        where that is long enough; bending spoils no copper.
      </p>
      <Accept
        proposed={proposed.length}
        pieces={pieces}
        busy={laid?.busy ?? false}
        onAccept={() => putOnRecord(proposed)}
      />
      <Changed trial={trial} cables={plan.cables} />
      <div class="cut-cables">
        {plan.cables.map((cable) => (
          <OneCable key={cable.cable} cable={cable} show={units.value} />
        ))}
      </div>
      <PieceAside trial={trial} />
      <AsideList trial={trial} kind="specimen" nameOf={({ specimen = '' }) => specimen} />
      <p>
        <b>All together:</b>{' '}
        {lengthWords(
          plan.cables.reduce((sum, cable) => sum + cable.needed, 0),
          units.value,
        )}{' '}
        of cable with what the saw takes{plan.cost.length > 0 && `, ${plan.cost.map(moneyWords).join(' and ')}`}.
      </p>
    </PlanSection>
  );
}

/** Why pieces are usually put aside. */
const USUAL = ['lost', 'spoilt in cutting', 'entered by mistake'];

type Pieces = CablePlan['pieces'];

async function putOnRecord(pieces: Pieces): Promise<void> {
  for (const piece of pieces) await say('specimen', specimenRow(piece));
}

interface AcceptProps {
  proposed: number;
  pieces: number;
  busy: boolean;
  onAccept: () => Promise<void>;
}

/** Puts the pieces that the plan proposes on record, so that Bench can ask for them. */
function Accept({ proposed, pieces, busy, onAccept }: AcceptProps) {
  const [writing, setWriting] = useState(false);
  if (proposed === 0)
    return <p role="status">All {pieces} pieces are on record: Bench asks for them by their codes.</p>;
  const accept = async () => {
    setWriting(true);
    await onAccept().finally(() => setWriting(false));
  };
  return (
    <div class="buttons accept">
      <button type="button" class="button main" disabled={busy || writing} onClick={() => void accept()}>
        {proposed === pieces ? 'Accept this cut list' : `Accept the ${proposed} new pieces`}
      </button>
      <p class="note" role="status">
        {proposed} of {pieces} pieces are proposed. Bench asks for them once they are accepted.
      </p>
    </div>
  );
}

/** Pieces that something was done with: read, bent by hand, worn, loaded, or cut into another. Their length is a fact. */
function piecesInUse({ readings, judgements, endurance, currents, specimens }: Trial): ReadonlySet<string> {
  return new Set([
    ...[...readings, ...endurance, ...currents].map(({ specimen }) => specimen),
    ...judgements.flatMap(({ left, right }) => [left, right]),
    ...specimens.flatMap(({ cutFrom, specimen }) =>
      cutFrom !== null && readings.some((reading) => reading.specimen === specimen) ? [cutFrom] : [],
    ),
  ]);
}

/** Pieces on record that nobody has read yet and that the plan would now cut otherwise, with the cells that would change. */
function toChange(trial: Trial, cables: readonly CablePlan[]): { row: Row; changes: Row }[] {
  const used = piecesInUse(trial);
  const rows = new Map(trial.specimens.map(({ specimen, row }) => [specimen, row]));
  return cables
    .flatMap(({ pieces }) => pieces)
    .flatMap((piece) => {
      const row = rows.get(piece.specimen);
      if (row === undefined || !differs(piece) || used.has(piece.specimen)) return [];
      const { length, cutFrom } = piece.planned!;
      const millimetres = String(Math.round(length! * 1000));
      return [{ row, changes: { cut_length: millimetres, cut_length_unit: 'mm', cut_from: cutFrom ?? '' } }];
    });
}

/** Lengths that changed since the cut list was accepted, and the act that takes them over. */
function Changed({ trial, cables }: { trial: Trial; cables: readonly CablePlan[] }) {
  const changed = toChange(trial, cables);
  if (changed.length === 0) return null;
  const take = async () => {
    for (const { row, changes } of changed) await correctRow('specimen', row, changes);
  };
  const many = changed.length === 1 ? 'One piece' : `${changed.length} pieces`;
  return (
    <div class="buttons accept">
      <button type="button" class="button" onClick={() => void take()}>
        Take over the new {changed.length === 1 ? 'length' : 'lengths'}
      </button>
      <p class="note" role="status">
        {many} on record, not read yet, would now be cut to another length.
      </p>
    </div>
  );
}

/** Puts one of the pieces on record aside. */
function PieceAside({ trial: { specimens } }: { trial: Trial }) {
  const [chosen, setChosen] = useState('');
  const piece = specimens.find(({ specimen }) => specimen === chosen) ?? specimens[0];
  if (piece === undefined) return null;
  return (
    <details class="piece-aside">
      <summary>A piece was lost or spoilt</summary>
      <div class="buttons add">
        <label>
          <span class="hidden">Piece to put aside</span>
          <select value={piece.specimen} onChange={(event) => setChosen(event.currentTarget.value)}>
            {specimens.map(({ specimen, code }) => (
              <option key={specimen} value={specimen}>
                {[code, specimen].filter((words) => words !== '').join(', ')}
              </option>
            ))}
          </select>
        </label>
        <PutAside
          about="specimen"
          which={piece.specimen}
          name={piece.specimen}
          along="What was read on it goes with it, and the plan proposes another."
          usual={USUAL}
        />
      </div>
    </details>
  );
}

function OneCable({ cable, show }: { cable: CablePlan; show: DisplayUnits }) {
  return (
    <table class="pieces">
      <caption>
        <Name>{cable.name}</Name>
        <span class="note">{totalWords(cable, show)}</span>
      </caption>
      <thead>
        <tr>
          <th scope="col">Code</th>
          <th scope="col">Piece</th>
          <th scope="col" class="number">
            Length
          </th>
          <th scope="col">Cut from</th>
          <th scope="col">For</th>
        </tr>
      </thead>
      <tbody>
        {cable.pieces.map((piece) => (
          <tr key={piece.specimen} class={piece.onRecord ? '' : 'proposed'} title={piece.why}>
            <td class="code">{piece.code}</td>
            <th scope="row">
              <bdi dir="auto">{piece.specimen}</bdi>
              {!piece.onRecord && <span class="note"> proposed</span>}
            </th>
            <td class="number">
              {piece.length === null ? 'as bought' : lengthWords(piece.length, show)}
              {differs(piece) && <span class="note">now {lengthWords(piece.planned?.length ?? 0, show)}</span>}
            </td>
            <td>
              <bdi dir="auto">{piece.cutFrom ?? ''}</bdi>
            </td>
            <td>{PURPOSES[piece.kind] ?? ''}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** Half a millimetre: what a saw leaves open anyway. */
const SAME_LENGTH = 0.0005;

/** Whether a piece on record would now be cut to another length. */
function differs({ onRecord, length, planned }: CablePlan['pieces'][number]): boolean {
  const now = planned?.length ?? null;
  return onRecord && length !== null && now !== null && Math.abs(length - now) >= SAME_LENGTH;
}

function totalWords({ needed, bought, toBuy, leftover, shortBy, cost }: CablePlan, show: DisplayUnits): string {
  const got =
    bought === null
      ? `buy ${lengthWords(toBuy, show)}`
      : shortBy > 0
        ? `bought ${lengthWords(bought, show)}, ${lengthWords(shortBy, show)} too little`
        : `bought ${lengthWords(bought, show)}`;
  const left = leftover > 0.001 ? `, ${lengthWords(leftover, show)} left over` : '';
  return `Needs ${lengthWords(needed, show)}; ${got}${left}${cost === null ? '' : `, ${moneyWords(cost)}`}.`;
}

function moneyWords({ amount, currency }: { amount: number; currency: string }): string {
  return currency === '' ? amount.toFixed(2) : `${amount.toFixed(2)}\u00a0${currency}`;
}
