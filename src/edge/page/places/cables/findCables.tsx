import { ChoiceField } from '../../parts/choiceField.tsx';
import {
  askForAll,
  choices,
  currencyAsked,
  found,
  nothingAsked,
  type WishFields,
  wishFields,
  wishFor,
} from '../../store/across/findCables.ts';
import { priceTrouble } from '../../store/across/priceAsked.ts';
import { indexed } from '../../store/across/shelfLines.ts';

/** What is looked for: words, size, metal, price. The list below follows each key. */
export function FindCables() {
  const { sizes, metals, currencies } = choices.value;
  return (
    <search class="find">
      <div class="edit words">
        <label for="find-words">Words</label>
        <input
          id="find-words"
          type="search"
          value={wishFields.value.words}
          placeholder="maker, model, trial, lot, 2 AWG …"
          autocomplete="off"
          spellcheck={false}
          dir="auto"
          onInput={(event) => wishFor('words', event.currentTarget.value)}
        />
      </div>
      <Choice
        field="size"
        label="Size on the label"
        all="every size"
        choices={sizes.map(({ size, label }) => [size, label])}
      />
      <Choice field="metal" label="Metal found" all="every metal" choices={metals.map((metal) => [metal, metal])} />
      <Price field="least" label="Price a metre from" />
      <Price field="most" label="to" />
      {currencies.length > 1 && (
        <Choice
          field="currency"
          label="Currency"
          all={currencyAsked.value || 'every currency'}
          choices={currencies.map((each) => [each, each])}
        />
      )}
      <p class="count" role="status">
        {countWords(found.value.length, indexed.value.length)}
        {!nothingAsked.value && (
          <button type="button" class="link" onClick={askForAll}>
            show all
          </button>
        )}
      </p>
    </search>
  );
}

function countWords(shown: number, all: number): string {
  const many = (count: number) => count.toLocaleString('en');
  return shown === all ? `${many(all)} ${all === 1 ? 'cable' : 'cables'}` : `${many(shown)} of ${many(all)} cables`;
}

interface ChoiceProps {
  field: keyof WishFields;
  label: string;
  /** What the first choice says, which asks for nothing. */
  all: string;
  choices: readonly (readonly [value: string, shown: string])[];
}

function Choice({ field, label, all, choices: offered }: ChoiceProps) {
  const now = wishFields.value[field];
  const missing = now !== '' && !offered.some(([value]) => value === now);
  return (
    <ChoiceField
      id={`find-${field}`}
      label={label}
      value={now}
      choices={[['', all], ...(missing ? [[now, now] as const] : []), ...offered]}
      onChoose={(value) => wishFor(field, value)}
    />
  );
}

function Price({ field, label }: { field: 'least' | 'most'; label: string }) {
  const typed = wishFields.value[field];
  const trouble = priceTrouble(field, wishFields.value);
  const id = `find-${field}`;
  return (
    <div class="edit price">
      <label for={id}>
        {label} {field === 'least' && currencyAsked.value !== '' && <span class="note">{currencyAsked.value}</span>}
      </label>
      <input
        id={id}
        value={typed}
        inputMode="decimal"
        autocomplete="off"
        aria-invalid={trouble !== null ? 'true' : undefined}
        aria-describedby={trouble !== null ? `${id}-trouble` : undefined}
        onInput={(event) => wishFor(field, event.currentTarget.value)}
      />
      {trouble !== null && (
        <p class="trouble" id={`${id}-trouble`}>
          {trouble}
        </p>
      )}
    </div>
  );
}
