import { useId } from 'preact/hooks';
import { descriptionText } from '../../../../report/publish/cards/description.ts';
import type { SealedPart } from '../../../../trial/trial.ts';
import { boxLimit, boxLinks } from '../../store/publish/boxText.ts';
import type { PublishShown } from '../../worker/jobs.ts';
import { useSaid } from './useSaid.ts';

/** The same facts as plain text for a description box, with a limit of characters and addresses of the parts. */
export function BoxText({ shown, parts }: { shown: PublishShown; parts: readonly SealedPart[] }) {
  const id = useId();
  const [said, setSaid] = useSaid();
  const limit = boxLimit.value;
  const links = parts.flatMap(({ part, title }) => {
    const address = (boxLinks.value[part] ?? '').trim();
    return address === '' ? [] : [{ title: title || `Part ${part}`, address }];
  });
  const { text, length, leftOut } = descriptionText(shown.findings, shown.trial, { limit, links });
  const copy = async () => {
    await navigator.clipboard.writeText(text).then(
      () => setSaid('Copied.'),
      () => setSaid('This browser does not let the page copy; mark the text and copy it yourself.'),
    );
  };
  return (
    <section class="box-text" aria-labelledby={`${id}-head`}>
      <h2 id={`${id}-head`}>Text for the description box</h2>
      <div class="box-fields">
        <div class="edit">
          <label for={`${id}-limit`}>Most characters</label>
          <input
            id={`${id}-limit`}
            type="number"
            min={100}
            max={100000}
            step={100}
            value={limit}
            onInput={(event) => {
              const typed = event.currentTarget.valueAsNumber;
              if (typed >= 1) boxLimit.value = Math.round(typed);
            }}
          />
        </div>
        {parts.map(({ part }) => (
          <div class="edit" key={part}>
            <label for={`${id}-${part}`}>{`Address of part ${part}`}</label>
            <input
              id={`${id}-${part}`}
              type="url"
              value={boxLinks.value[part] ?? ''}
              placeholder="https://"
              onInput={(event) => {
                boxLinks.value = { ...boxLinks.peek(), [part]: event.currentTarget.value };
              }}
            />
          </div>
        ))}
      </div>
      <label class="hidden" for={`${id}-text`}>
        The text
      </label>
      <textarea id={`${id}-text`} class="box-field" rows={12} readOnly value={text} dir="auto" />
      <p class="counter">
        {`${length} of ${limit} characters.`}
        {leftOut > 0 && ` ${leftOut === 1 ? 'One line does' : `${leftOut} lines do`} not fit.`}
      </p>
      <div class="buttons">
        <button type="button" class="button" onClick={() => void copy()}>
          Copy the text
        </button>
      </div>
      <p class="note" role="status">
        {said}
      </p>
    </section>
  );
}
