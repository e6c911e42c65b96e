import { useId } from 'preact/hooks';
import { ABOUTS } from '../../../../report/publish/cards/aspects.ts';
import { CARD_SIZES } from '../../../../report/publish/cards/canvas.ts';
import { aboutsIn, cardSvg, NoCard } from '../../../../report/publish/cards/card.ts';
import { descriptionText } from '../../../../report/publish/cards/description.ts';
import { METHODS } from '../../../../report/publish/cards/methods.ts';
import { ChoiceField } from '../../parts/choiceField.tsx';
import { Picture } from '../../parts/picture.tsx';
import { drawing, saveAllCards, stopDrawing } from '../../store/publish/allCards.ts';
import { boxLimit } from '../../store/publish/boxText.ts';
import { saveCard } from '../../store/publish/cardFile.ts';
import { cardLook, cardWish, changeLook, changeWish, wishFor } from '../../store/publish/cardWish.ts';
import { handOver, plainName } from '../../store/publish/files.ts';
import { subject } from '../../store/publish/publishing.ts';
import type { PublishShown } from '../../worker/jobs.ts';
import { CARD_WORDS } from './cardWords.ts';
import { useSaid } from './useSaid.ts';

interface CardsProps {
  trial: string;
  shown: PublishShown;
}

/** Cards for film and posts: chosen, looked at while one chooses, saved. */
export function Cards({ trial, shown }: CardsProps) {
  const id = useId();
  const [said, setSaid] = useSaid();
  const wish = wishFor(cardWish.value, shown.findings);
  const look = cardLook.value;
  const drawn = drawnOr(() => cardSvg(shown, wish, look));
  const name = `${plainName(trial)}-${wish.kind}-${look.size}`;
  const save = async (form: 'png' | 'svg') => {
    if (form === 'svg') {
      handOver(new Blob([drawn.svg], { type: 'image/svg+xml' }), `${name}.svg`);
      return setSaid(`${name}.svg is among your downloads.`);
    }
    setSaid('Drawing …');
    setSaid(await saveCard({ trial, subject: subject.peek(), wish, look, svg: drawn.svg }, `${name}.png`));
  };
  const saveAll = async () => {
    setSaid('');
    const { text } = descriptionText(shown.findings, shown.trial, { limit: boxLimit.peek(), links: [] });
    setSaid(await saveAllCards({ trial, subject: subject.peek(), shown, look, description: text }));
  };
  const now = drawing.value;
  return (
    <section class="cards" aria-labelledby={`${id}-head`}>
      <h2 id={`${id}-head`}>Cards for film and posts</h2>
      <div class="card-desk">
        <div class="card-choices">
          <CardChoices shown={shown} />
        </div>
        <div class="card-shown">
          <div class={look.transparent ? 'card-frame see-through' : 'card-frame'} data-size={look.size}>
            {drawn.sentence === '' ? <Picture svg={drawn.svg} class="stretch" /> : <p>{drawn.sentence}</p>}
          </div>
          <div class="buttons">
            <button type="button" class="button main" disabled={drawn.svg === ''} onClick={() => void save('png')}>
              Save as PNG
            </button>
            <button type="button" class="button" disabled={drawn.svg === ''} onClick={() => void save('svg')}>
              Save as SVG
            </button>
            {now === null ? (
              <button type="button" class="button" onClick={() => void saveAll()}>
                All cards of this look, .zip
              </button>
            ) : (
              <button type="button" class="button" onClick={stopDrawing}>
                Stop
              </button>
            )}
          </div>
          {now !== null && (
            <p class="working">
              <progress aria-label="Drawing the cards" max={now.of} value={now.done} />
              {`${now.done} of ${now.of} cards`}
            </p>
          )}
          <p class="note" role="status">
            {said}
          </p>
        </div>
      </div>
    </section>
  );
}

function drawnOr(draw: () => string): { svg: string; sentence: string } {
  try {
    return { svg: draw(), sentence: '' };
  } catch (error) {
    if (!(error instanceof NoCard)) throw error;
    return { svg: '', sentence: error.message };
  }
}

function CardChoices({ shown: { findings } }: { shown: PublishShown }) {
  const wish = wishFor(cardWish.value, findings);
  const look = cardLook.value;
  const cables = findings.cables
    .filter(({ role }) => role !== 'control')
    .map((c): [string, string] => [c.cable, c.name]);
  const abouts = aboutsIn(findings);
  const { kind } = wish;
  return (
    <>
      <ChoiceField
        label="Card"
        value={kind}
        choices={CARD_WORDS.kinds}
        onChoose={(value) => changeWish({ kind: value as typeof kind })}
      />
      {kind === 'method' && (
        <ChoiceField
          label="Method"
          value={wish.method ?? ''}
          choices={METHODS.map(({ method, title }) => [method, title])}
          onChoose={(method) => changeWish({ method })}
        />
      )}
      {(kind === 'one' || kind === 'two' || kind === 'lower-third') && (
        <ChoiceField
          label={kind === 'two' ? 'First cable' : 'Cable'}
          value={wish.cables[0] ?? ''}
          choices={cables}
          onChoose={(cable) => changeWish({ cables: [cable, wish.cables[1] ?? ''] })}
        />
      )}
      {kind === 'two' && (
        <ChoiceField
          label="Second cable"
          value={wish.cables[1] ?? ''}
          choices={cables}
          onChoose={(cable) => changeWish({ cables: [wish.cables[0] ?? '', cable] })}
        />
      )}
      {kind !== 'method' && kind !== 'order' && (
        <ChoiceField
          label="About"
          value={wish.about}
          choices={CARD_WORDS.abouts.filter(([about]) => abouts.some((one) => one === about))}
          onChoose={(value) => changeWish({ about: ABOUTS.find((about) => about === value) ?? 'inside' })}
        />
      )}
      {kind === 'one' && (
        <ChoiceField
          label="Shown so far"
          value={String(wish.step ?? 4)}
          choices={CARD_WORDS.steps}
          onChoose={(step) => changeWish({ step: Number(step) })}
        />
      )}
      <ChoiceField
        label="Size"
        value={look.size}
        choices={CARD_SIZES.map((size) => [size, CARD_WORDS.sizes[size]])}
        onChoose={(value) => changeLook({ size: CARD_SIZES.find((size) => size === value) ?? '1920x1080' })}
      />
      <Tick label="Light on dark" value={look.dark} onChoose={(dark) => changeLook({ dark })} />
      <Tick
        label="Leave the ground out"
        value={look.transparent}
        onChoose={(transparent) => changeLook({ transparent })}
      />
    </>
  );
}

function Tick({ label, value, onChoose }: { label: string; value: boolean; onChoose: (value: boolean) => void }) {
  const id = useId();
  return (
    <div class="tick">
      <input type="checkbox" id={id} checked={value} onChange={(event) => onChoose(event.currentTarget.checked)} />
      <label for={id}>{label}</label>
    </div>
  );
}
