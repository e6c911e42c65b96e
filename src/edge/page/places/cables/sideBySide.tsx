import { QUANTITIES } from '../../../../findings/across/quantities.ts';
import { shelfKey } from '../../../../findings/across/shelfCables.ts';
import { acrossChart } from '../../../../report/across/acrossChart.ts';
import { variablesTheme } from '../../../../report/theme.ts';
import { ChoiceField } from '../../parts/choiceField.tsx';
import { HowFold } from '../../parts/howFold.tsx';
import { Name } from '../../parts/name.tsx';
import { Picture } from '../../parts/picture.tsx';
import { useWidth } from '../../parts/useWidth.ts';
import {
  across,
  choose,
  chooseNone,
  chosen,
  link,
  linkName,
  links,
  quantityId,
  shifted,
} from '../../store/across/chosenCables.ts';
import { units } from '../../store/units.ts';

/** The chosen cables on one axis, with what stands between their trials said first. */
export function SideBySide() {
  const now = across.value;
  return (
    <section class="side-by-side" aria-labelledby="side-by-side">
      <h2 id="side-by-side">Side by side</h2>
      {now === null ? (
        <p class="note">Tick the boxes of some cables, of one trial or of several, and they stand here on one axis.</p>
      ) : (
        <>
          <Chosen />
          <Asked />
          <div class="said-first">
            {now.sentences.map((sentence) => (
              <p key={sentence}>{sentence}</p>
            ))}
          </div>
          <Chart />
          {now.howWeKnow.length > 0 && (
            <HowFold within>
              {now.howWeKnow.map((sentence) => (
                <p key={sentence}>{sentence}</p>
              ))}
            </HowFold>
          )}
        </>
      )}
    </section>
  );
}

function Chosen() {
  return (
    <ul class="chosen-cables">
      {chosen.value.map((line) => (
        <li key={shelfKey(line)}>
          <Name>{line.name || line.cable}</Name>
          <button
            type="button"
            class="link"
            aria-label={`Let go of ${line.name || line.cable} of ${line.title || line.trial}`}
            onClick={() => choose(shelfKey(line), false)}
          >
            let go
          </button>
        </li>
      ))}
      {chosen.value.length > 1 && (
        <li>
          <button type="button" class="link" onClick={chooseNone}>
            let go of all
          </button>
        </li>
      )}
    </ul>
  );
}

function Asked() {
  return (
    <div class="asked">
      <ChoiceField
        id="across-quantity"
        label="By"
        value={quantityId.value}
        choices={QUANTITIES.map(({ id, name }) => [id, name])}
        onChoose={(id) => {
          quantityId.value = id;
        }}
      />
      {links.value.length > 0 && (
        <ChoiceField
          id="across-link"
          label="Piece that links the trials"
          value={link.value?.name ?? ''}
          choices={[
            ...links.value.map(({ name, trials }) => [name, `${name}, in ${trials} trials`] as const),
            ['', 'none'],
          ]}
          onChoose={(name) => {
            linkName.value = name;
          }}
        />
      )}
      {across.value?.between && (
        <div class="tick">
          <input
            type="checkbox"
            id="across-shift"
            checked={shifted.value}
            onChange={(event) => {
              shifted.value = event.currentTarget.checked;
            }}
          />
          <label for="across-shift">Shift each trial by it</label>
        </div>
      )}
    </div>
  );
}

function Chart() {
  const [place, width] = useWidth<HTMLDivElement>(900);
  const now = across.value;
  const svg =
    now === null ? '' : acrossChart(now, { width: Math.floor(width), theme: variablesTheme, units: units.value });
  const widened = now?.groups.some(({ rows }) => rows.some(({ way }) => way === 'widened')) ?? false;
  return (
    <div ref={place}>
      <Picture svg={svg} />
      {widened && (
        <p class="note">
          The bar is what the cable’s own trial found; the line with ends is how far it reaches with the error between
          trials. The figures beside it count both.
        </p>
      )}
    </div>
  );
}
