/** Things entered by mistake: out of what counts, and still on record. */
import type { WithdrawnKind } from '../journal/kinds/withdrawal.ts';
import { cell } from './cells.ts';
import type { Aside, AsideKind, Reading, Trial, TypedRow, Withdrawal } from './trial.ts';

/** The acts that hold now: the last about each thing, unless it takes it up again. */
export class SetAside {
  /** What was kept out so far. */
  readonly rows: Aside[] = [];
  readonly #acts = new Map<string, Withdrawal>();

  /** @param acts in the order in which they were said */
  constructor(acts: readonly Withdrawal[]) {
    for (const act of acts) this.#acts.set(keyOf(act.about, act.which, act.triedWith), act);
  }

  /** The act that puts a thing aside; null when it counts. */
  act(about: WithdrawnKind, which: string, triedWith: string | null = null): Withdrawal | null {
    if (this.#acts.size === 0) return null;
    // What was said of one cable in a fitting outweighs what was said of the fitting.
    const own = triedWith === null ? undefined : this.#acts.get(keyOf(about, which, triedWith));
    const act = own ?? this.#acts.get(keyOf(about, which, null));
    return act === undefined || act.again ? null : act;
  }

  /** The rows of a table that count; the others are kept in {@link rows}. `putBy`: the act that puts a row aside. */
  standing<T extends TypedRow>(kind: AsideKind, rows: readonly T[], putBy: (row: T) => Withdrawal | null): T[] {
    if (this.#acts.size === 0) return [...rows];
    return rows.filter((one, place) => {
      const act = putBy(one);
      if (act !== null)
        this.rows.push({ kind, place, entry: one.entry, row: one.row, withdrawal: act.withdrawal, why: act.why });
      return act === null;
    });
  }

  /** Readings on pieces that were put aside stand aside with them; struck and replaced ones stay what they are. */
  readings(readings: Reading[], putBy: (specimen: string, cable: string) => Withdrawal | null): Reading[] {
    if (this.#acts.size === 0) return readings;
    return readings.map((reading) => {
      const act = reading.standing === 'counted' ? putBy(reading.specimen, reading.cable) : null;
      return act === null ? reading : { ...reading, standing: 'aside', why: act.why };
    });
  }
}

const keyOf = (about: WithdrawnKind, which: string, triedWith: string | null) =>
  [about, which, triedWith ?? ''].join('\u001f');

/** Cells of a column in the rows of a table that stand aside, such as names and codes that nothing new may take. */
export function asideCells(trial: Pick<Trial, 'aside'>, kind: AsideKind, column: string): string[] {
  return trial.aside.filter((one) => one.kind === kind).map(({ row }) => cell(row, column));
}

/** All rows of a table as they were typed, those put aside in their places among the others. */
export function withAside(trial: Pick<Trial, 'aside'>, kind: AsideKind, standing: readonly TypedRow[]): TypedRow[] {
  const all: TypedRow[] = [...standing];
  const aside = trial.aside.filter((one) => one.kind === kind).sort((a, b) => a.place - b.place);
  for (const one of aside) all.splice(one.place, 0, one);
  return all;
}
