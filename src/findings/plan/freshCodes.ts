import type { Entry } from '../../journal/entry.ts';
import { blindCodes } from '../../methods/decide/blindCodes.ts';
import { stableShuffle } from '../../methods/decide/stableShuffle.ts';
import type { Trial } from '../../trial/trial.ts';

type Row = Readonly<Record<string, string>>;

/**
 * The rows that give every piece with a code another one: codes that stood beside names are no longer blind. Pieces that
 * shared one share the new one. No code that was ever given comes again, so that an old label can be told from a new one.
 *
 * @param entries the whole journal: codes of earlier rounds are in it
 * @param seed drawn at random; the codes follow from it
 */
export function freshCodes(trial: Trial, entries: readonly Entry[], seed: string): Row[] {
  const coded = trial.specimens.filter(({ code }) => code !== '');
  const names = trial.cables.flatMap(({ row, cable }) => [row.maker ?? '', row.model ?? '', cable]);
  const taken = [
    ...entries.filter(({ kind }) => kind === 'specimen').map(({ body }) => body.code ?? ''),
    ...coded.map(({ code }) => code),
  ].filter((code) => code !== '');
  // Pieces of one cable may share a code; they go on sharing it.
  const old = [...new Set(coded.map(({ code }) => code))];
  const codes = stableShuffle(blindCodes(old.length, { seed, names, taken }), `${seed} pieces`);
  const fresh = new Map(old.map((code, place) => [code, codes[place]!]));
  return coded.map(({ row, code }) => ({ ...row, code: fresh.get(code)! }));
}
