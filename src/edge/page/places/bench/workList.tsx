import type { LookItem } from '../../../../findings/bench/wantedLooks.ts';
import type { BenchAct, BenchItem, BenchList } from '../../../../findings/nextAct.ts';
import { planSettings } from '../../../../findings/plan/settings.ts';
import type { Trial } from '../../../../trial/trial.ts';
import { Switch } from '../../parts/switch.tsx';
import { show } from '../../store/bench/dialogs.ts';
import { actsLeft, takeUp } from '../../store/bench/inHand.ts';
import { LOOK_NAMES, takeLook } from '../../store/bench/looks.ts';
import { pieceWords, quantityHead } from '../../store/bench/names.ts';
import { workBy } from '../../store/bench/putRight.ts';

/** What is left, by quantity or piece by piece, and the way to any of it. */
export function WorkList({ trial, act, work }: { trial: Trial; act: BenchAct; work: BenchList }) {
  const working = planSettings(trial.settings).working;
  const groups = working === 'by quantity' ? byQuantity(work.items) : byPiece(trial, work.items);
  const here = working === 'by quantity' ? act.item.quantity : act.item.specimen;
  return (
    <section class="work-list">
      <h2>{working === 'by quantity' ? 'By quantity, pieces in drawn order' : 'Piece by piece'}</h2>
      <ul>
        {groups.map((group) => (
          <li key={group.key} class={group.key === here ? 'here' : ''}>
            <button
              type="button"
              aria-current={group.key === here ? 'true' : undefined}
              onClick={() => takeUp(firstLeft(group))}
            >
              <span>{group.head}</span>
              <span class="count">
                {group.done} of {group.wanted}
              </span>
            </button>
          </li>
        ))}
        <Looks looks={work.looks} />
      </ul>
      <div class="list-acts">
        <Switch
          legend="Order of work"
          choices={[
            ['by quantity', 'by quantity', 'by quantity, across the pieces'],
            ['by specimen', 'by piece', 'piece by piece'],
          ]}
          value={working}
          onChoose={(next) => void workBy(next)}
        />
        <button type="button" class="link" onClick={() => show('choose')}>
          Another piece or quantity
        </button>
        <button type="button" class="link" onClick={() => show('mix-up')}>
          Pieces were mixed up
        </button>
      </div>
      <Blinding trial={trial} />
    </section>
  );
}

interface Group {
  key: string;
  head: string;
  items: BenchItem[];
  done: number;
  wanted: number;
}

function grouped(
  items: readonly BenchItem[],
  keyOf: (item: BenchItem) => string,
  headOf: (key: string) => string,
): Group[] {
  const groups = new Map<string, BenchItem[]>();
  for (const item of items) groups.set(keyOf(item), [...(groups.get(keyOf(item)) ?? []), item]);
  return [...groups].map(([key, own]) => ({
    key,
    head: headOf(key),
    items: own,
    done: own.reduce((sum, item) => sum + item.done, 0),
    wanted: own.reduce((sum, item) => sum + item.wanted, 0),
  }));
}

const byQuantity = (items: readonly BenchItem[]) => grouped(items, (item) => item.quantity, quantityHead);
const byPiece = (trial: Trial, items: readonly BenchItem[]) =>
  grouped(
    items,
    (item) => item.specimen,
    (specimen) => pieceWords(trial, specimen),
  );

/** The first reading left of a group in working order; its first item when all is done. */
function firstLeft({ items }: Group): BenchItem {
  return actsLeft.value.find((act) => items.includes(act.item))?.item ?? items[0]!;
}

/** What eyes and a magnet are to say, each with how many cables it is said of. */
function Looks({ looks }: { looks: readonly LookItem[] }) {
  return (
    <>
      {looks.map(({ look, cables, left }) => (
        <li key={look}>
          <button type="button" onClick={() => takeLook(look)}>
            <span>{LOOK_NAMES[look]}</span>
            <span class="count">
              {cables.length - left.length} of {cables.length}
            </span>
          </button>
        </li>
      ))}
    </>
  );
}

function Blinding({ trial }: { trial: Trial }) {
  const { blind, how } = trial.blinding;
  if (blind) {
    return (
      <>
        <p class="note">
          This trial goes by codes{how === '' ? '' : ` (${how})`}. Names are hidden until somebody reveals them.
        </p>
        <button type="button" class="link" onClick={() => show('reveal')}>
          Reveal the names
        </button>
      </>
    );
  }
  return (
    <button type="button" class="link" onClick={() => show('blind')}>
      Judge blind
    </button>
  );
}
