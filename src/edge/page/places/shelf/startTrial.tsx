import { OWNED_TOOLS, type OwnedTool } from '../../../../findings/starter/ownedTools.ts';
import { limitWords } from '../../../../report/words/limitWords.ts';
import { isOrdinaryMultimeter, usualLimit } from '../../../../trial/usualLimits.ts';
import { findUnit } from '../../../../units/unit.ts';
import { Trouble } from '../../parts/trouble.tsx';
import { troubleSentence } from '../../store/plan/correct.ts';
import {
  answers,
  limits,
  limitTrouble,
  own,
  owned,
  type StarterFields,
  starterTroubles,
  starting,
  startTrial,
  startTrouble,
  titleOf,
  typeAnswer,
  typeLimit,
} from '../../store/starter.ts';

interface Ask {
  name: keyof StarterFields;
  label: string;
  hint: string;
  example: string;
}

const ASKED: readonly Ask[] = [
  { name: 'cables', label: 'How many cables', hint: 'makers and prices can follow', example: '6' },
  { name: 'size', label: 'Size on the labels', hint: 'one for all; single ones can be changed', example: '2 AWG' },
  { name: 'metal', label: 'Metal on the labels', hint: 'word for word, blank when they do not say', example: 'OFC' },
  { name: 'bought', label: 'Length bought of each', hint: 'blank when nothing is bought yet', example: '10 ft' },
  { name: 'temperature', label: 'Temperature of all pieces', hint: 'to which they are brought', example: '20 C' },
  {
    name: 'control',
    label: 'Control piece',
    hint: 'size of plain solid copper building wire that checks all tools at once; blank for none',
    example: '10 AWG',
  },
];

/** The start of a trial: three questions, a list of tools, and a plan comes out of it. */
export function StartTrial({ open }: { open: boolean }) {
  return (
    <details class="start-trial" open={open || undefined}>
      <summary>
        <h2>Start a trial</h2>
      </summary>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          void startTrial();
        }}
      >
        <div class="parts">
          <div>
            <div class="field">
              <label for="start-title">
                Title
                <span class="hint">as readers see it</span>
              </label>
              <input
                id="start-title"
                value={answers.value.title}
                placeholder={titleOf({ ...answers.value, title: '' })}
                autocomplete="off"
                dir="auto"
                onInput={(event) => typeAnswer('title', event.currentTarget.value)}
              />
            </div>
            {ASKED.map(Field)}
          </div>
          <fieldset class="owned">
            <legend>What do you own?</legend>
            <p class="note">
              With the usual limit of error of each. If the box prints another one, type that: 0.5 % + 3 counts, ±0.02
              mm.
            </p>
            <ul>
              {OWNED_TOOLS.map((tool) => (
                <Owned key={tool.tool} tool={tool} />
              ))}
            </ul>
          </fieldset>
        </div>
        <div class="buttons">
          <button type="submit" class="button main" disabled={starting.value}>
            Make the plan
          </button>
        </div>
        <Trouble>{startTrouble.value}</Trouble>
      </form>
    </details>
  );
}

function Field({ name, label, hint, example }: Ask) {
  const trouble = starterTroubles.value[name];
  const id = `start-${name}`;
  return (
    <div class="field" key={name}>
      <label for={id}>
        {label}
        <span class="hint">{hint}</span>
      </label>
      <input
        id={id}
        value={answers.value[name]}
        placeholder={`such as ${example}`}
        autocomplete="off"
        spellcheck={false}
        dir="auto"
        aria-invalid={trouble === undefined ? undefined : 'true'}
        aria-describedby={trouble === undefined ? undefined : `${id}-trouble`}
        onInput={(event) => typeAnswer(name, event.currentTarget.value)}
      />
      {trouble !== undefined && (
        <p class="trouble" id={`${id}-trouble`}>
          {troubleSentence(trouble)}
        </p>
      )}
    </div>
  );
}

function Owned({ tool }: { tool: OwnedTool }) {
  const has = owned.value.has(tool.tool);
  const id = `own-${tool.tool.replaceAll(' ', '-')}`;
  const refused = isOrdinaryMultimeter(tool.kind);
  const trouble = has ? limitTrouble(tool.tool) : null;
  return (
    <li>
      <div class="tick">
        <input
          type="checkbox"
          id={id}
          checked={has}
          onChange={(event) => own(tool.tool, event.currentTarget.checked)}
        />
        <label for={id}>
          {tool.tool}
          <span class="hint">
            {refused ? 'listed, but refused for heavy cable: it reads its own leads' : stepWords(tool)}
          </span>
        </label>
        {has && !refused && (
          <input
            class="limit"
            aria-label={`Limit of error of the ${tool.tool}`}
            aria-invalid={trouble === null ? undefined : 'true'}
            aria-describedby={trouble === null ? undefined : `${id}-trouble`}
            value={limits.value[tool.tool] ?? ''}
            placeholder={usualWords(tool)}
            autocomplete="off"
            onInput={(event) => typeLimit(tool.tool, event.currentTarget.value)}
          />
        )}
      </div>
      {trouble !== null && (
        <p class="trouble" id={`${id}-trouble`}>
          {troubleSentence(trouble)}
        </p>
      )}
    </li>
  );
}

const stepWords = ({ resolution, unit }: OwnedTool) => `step ${resolution} ${findUnit(unit)?.symbol ?? unit}`;

function usualWords({ kind, resolution, unit }: OwnedTool): string {
  const found = findUnit(unit);
  const usual = found === null ? null : usualLimit(kind, found.stepToSI(Number(resolution)));
  return usual === null ? '' : limitWords(usual.limit, unit);
}
