import type { BenchAct, BenchList } from '../../../../findings/nextAct.ts';
import { figureText } from '../../../../report/figures.ts';
import { repeatsSpan, repeatsStrip } from '../../../../report/repeatsStrip.ts';
import { variablesTheme } from '../../../../report/theme.ts';
import type { Trial } from '../../../../trial/trial.ts';
import { FigureOf } from '../../parts/figure.tsx';
import { Picture } from '../../parts/picture.tsx';
import { face } from '../../store/bench/bendHand.ts';
import { lackingContacts } from '../../store/bench/contacts.ts';
import { takeUp } from '../../store/bench/inHand.ts';
import { pieceNamed, pieceWords, quantityHead, signOf, unitWords } from '../../store/bench/names.ts';
import { displayStep, faceWords, type PieceSoFar, pieceSoFar } from '../../store/bench/repeats.ts';
import { lastKept } from '../../store/bench/sitting.ts';
import { soFar } from '../../store/bench/soFar.ts';
import { unit } from '../../store/bench/typedUnit.ts';
import { units } from '../../store/units.ts';
import { One } from './repeats.tsx';

const STRIP = { width: 118, height: 28 };

/** The quantity in hand on every piece so far, and what all readings say so far of this piece's cable. */
export function Fellows({ trial, act, work }: { trial: Trial; act: BenchAct; work: BenchList }) {
  const { quantity, specimen } = act.item;
  const pieces = piecesOf(work, act);
  const alike = { readings: trial.readings.filter((reading) => reading.quantity === quantity) };
  const rows = pieces.map((piece) => pieceSoFar(alike, piece, quantity, unit.value, face.value));
  const span = repeatsSpan(
    rows.map((row) => row.values),
    displayStep(trial, quantity, unit.value),
  );
  const inUnit = unitWords(unit.value);
  const head = [`${quantityHead(quantity)} so far`, faceWords(quantity, face.value), inUnit].filter(Boolean).join(', ');
  const spanned = `${Number(span.toPrecision(2))} ${inUnit}`.trim();
  return (
    <section class="fellows">
      <h2>{head}</h2>
      <ul>
        {rows.map((row) => (
          <Row
            key={row.specimen}
            trial={trial}
            row={row}
            span={span}
            quantity={quantity}
            here={row.specimen === specimen}
          />
        ))}
      </ul>
      <p class="note">
        Each line spans {spanned}, wider where a reading needs it. A ring stands far from its fellows; what is struck
        through stays on record.
      </p>
      <SoFar trial={trial} act={act} />
    </section>
  );
}

/** Pieces that the quantity is read on, in the order of the work; the one in hand in any case. */
function piecesOf(work: BenchList, act: BenchAct): string[] {
  const { quantity, specimen } = act.item;
  const wanted = work.items.filter((item) => item.quantity === quantity).map((item) => item.specimen);
  return wanted.includes(specimen) ? wanted : [...wanted, specimen];
}

interface RowProps {
  trial: Trial;
  row: PieceSoFar;
  span: number;
  quantity: string;
  here: boolean;
}

function Row({ trial, row, span, quantity, here }: RowProps) {
  return (
    <li class={here ? 'here' : ''}>
      <button
        type="button"
        class="sign"
        aria-label={`Take up ${pieceWords(trial, row.specimen)}`}
        onClick={() => takeUp({ specimen: row.specimen, quantity })}
      >
        <bdi dir="auto">{signOf(trial, row.specimen)}</bdi>
      </button>
      {row.alike.length === 0 ? (
        <span class="note to-come">to come</span>
      ) : (
        <ol>
          {row.alike.map((reading) => (
            <One key={reading.reading} reading={reading} />
          ))}
        </ol>
      )}
      <Picture silent svg={repeatsStrip(row, { ...STRIP, theme: variablesTheme, span })} />
      <b class="mean">{row.mean}</b>
    </li>
  );
}

/** The metal area by all readings so far: of the cable that was read before, then of the one in hand. */
function SoFar({ trial, act }: { trial: Trial; act: BenchAct }) {
  const before = lastKept.value;
  const other = before !== null && pieceNamed(trial, before.specimen)?.cable !== act.item.cable;
  return (
    <dl class="area-so-far" data-counts={soFar.value.counts}>
      {other && <Area trial={trial} specimen={before.specimen} />}
      <Area trial={trial} specimen={act.item.specimen} />
    </dl>
  );
}

function Area({ trial, specimen }: { trial: Trial; specimen: string }) {
  const area = soFar.value.areas.get(pieceNamed(trial, specimen)?.cable ?? '');
  return (
    <div>
      <dt>Metal in {signOf(trial, specimen)} so far</dt>
      <dd>
        {area === undefined ? (
          <span class="note">{toComeWords(trial, specimen)}</span>
        ) : (
          <FigureOf text={figureText(area, units.value)} unit />
        )}
      </dd>
    </div>
  );
}

/** What is still wanted for a first figure. */
function toComeWords(trial: Trial, specimen: string): string {
  const cable = pieceNamed(trial, specimen)?.cable;
  const lacking = lackingContacts.value.some((each) => pieceNamed(trial, each.specimen)?.cable === cable);
  return lacking
    ? 'to come: the ohms count once the distance between the contacts is added'
    : 'to come, from a mass with a length, or ohms over a distance';
}
