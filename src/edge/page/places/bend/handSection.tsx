import type { Findings } from '../../../../findings/schema.ts';
import type { Flex } from '../../../../findings/shapes/flex.ts';
import { howJudged } from '../../../../report/bend/bendSentences.ts';
import { placeStrip } from '../../../../report/bend/placeStrip.ts';
import { variablesTheme } from '../../../../report/theme.ts';
import { andList } from '../../../../report/words/andList.ts';
import { chanceText } from '../../../../report/words/chanceWords.ts';
import { noBreak } from '../../../../report/words/noBreak.ts';
import { Picture } from '../../parts/picture.tsx';

/** What judged pairs say of one cable: the chance of each place, and whom it cannot be told from. */
export function HandSection({ flex, cable, findings }: { flex: Flex; cable: string; findings: Findings }) {
  const judged = flex.judged?.cables.find((each) => each.cable === cable);
  if (!flex.judged || judged === undefined) return null;
  const called = (id: string) => findings.cables.find((c) => c.cable === id)?.name || id;
  const tied = judged.cannot_be_told_from.map(called);
  const own = flex.judged.groups.find((group) => group.includes(cable)) ?? [];
  const apart = flex.judged.cables.flatMap((c) => (own.includes(c.cable) ? [] : [called(c.cable)]));
  return (
    <section>
      <h3>By hand</h3>
      <p class="note">{noBreak(`${howJudged(flex.judged)}.`)}</p>
      {judged.probability_best === null ? (
        <p>No judgement joins it with {andList(apart)}: there is no chance of a place among all of them.</p>
      ) : (
        <>
          <p class="note">Chance of each place in ease of bending, the first the easiest:</p>
          <Picture class="stretch" svg={placeStrip(judged.place_probability, { width: 320, theme: variablesTheme })} />
          <p>
            Easiest of all with a chance of {chanceText(judged.probability_best)}.{' '}
            {tied.length > 0 ? `By hand it cannot be told from ${andList(tied)}.` : 'By hand it stands alone.'}
          </p>
        </>
      )}
    </section>
  );
}
