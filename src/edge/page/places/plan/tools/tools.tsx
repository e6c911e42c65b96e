import { useState } from 'preact/hooks';
import { refusedTools } from '../../../../../findings/plan/benchTools.ts';
import { limitSource, limitWords } from '../../../../../report/words/limitWords.ts';
import type { Instrument, Trial } from '../../../../../trial/trial.ts';
import { usualKinds } from '../../../../../trial/usualLimits.ts';
import { findUnit } from '../../../../../units/unit.ts';
import { AsideList } from '../../../parts/asideList.tsx';
import { EditField } from '../../../parts/editField.tsx';
import { PutAside } from '../../../parts/putAside.tsx';
import { checkWords } from '../../../store/plan/checkWords.ts';
import { addTool, checksOf, toolsToAdd, zeroSpan } from '../../../store/plan/tools.ts';
import { PlanSection } from '../planSection.tsx';
import { CheckDialog } from './checkDialog.tsx';

const COLUMNS = [
  { column: 'kind', label: 'Kind of tool' },
  { column: 'resolution', label: 'Smallest step' },
  { column: 'unit', label: 'Unit' },
  { column: 'max_error', label: 'Limit of error, as printed', example: 'as usual' },
  { column: 'valid_from_C', label: 'Good from °C', example: 'not said' },
  { column: 'valid_to_C', label: 'to °C', example: 'not said' },
] as const;

/** The tools with their limits of error: as the box prints them, as usual for their kind, or as a check has shown. */
export function Tools({ trial }: { trial: Trial }) {
  const [checking, setChecking] = useState<string | null>(null);
  const tool = trial.instruments.find(({ instrument }) => instrument === checking) ?? null;
  const assumed = trial.instruments.filter(({ limit }) => limit.assumed).length;
  const refused = new Set(refusedTools(trial).map(({ instrument }) => instrument));
  return (
    <PlanSection
      id="tools"
      class="tools"
      title="Tools, and how wrong they may be"
      state={`${trial.instruments.length}${assumed === 0 ? '' : `, ${assumed} with a usual limit`}`}
      next={trial.instruments.length === 0}
    >
      <p class="note">
        Limits as the box prints them: 0.5 % + 3 counts, ±0.02 mm. A blank one is taken as usual for such a tool, and
        said to be assumed. Better than any box is a check against something known.
      </p>
      {trial.instruments.length > 0 && (
        <table class="grid tools-grid" data-grid>
          <thead>
            <tr>
              <th scope="col">Tool</th>
              {COLUMNS.map(({ column, label }) => (
                <th key={column} scope="col">
                  {label}
                </th>
              ))}
              <th scope="col">Taken as</th>
              <td />
            </tr>
          </thead>
          <tbody>
            {trial.instruments.map((each) => (
              <ToolRow
                key={each.instrument}
                trial={trial}
                tool={each}
                refused={refused.has(each.instrument)}
                onCheck={() => setChecking(each.instrument)}
              />
            ))}
          </tbody>
        </table>
      )}
      <AsideList
        trial={trial}
        kind="check"
        nameOf={(row) => `the check of ${row.instrument ?? ''} that ${checkWords(row)}`}
      />
      <AsideList trial={trial} kind="instrument" nameOf={({ instrument = '' }) => instrument} />
      <AddTool trial={trial} />
      {tool !== null && <CheckDialog tool={tool} onClose={() => setChecking(null)} />}
    </PlanSection>
  );
}

interface ToolRowProps {
  trial: Trial;
  tool: Instrument;
  /** It cannot read heavy cable; why stands among what to know before the first cut. */
  refused: boolean;
  onCheck: () => void;
}

function ToolRow({ trial, tool, refused, onCheck }: ToolRowProps) {
  return (
    <tr>
      <th scope="row">
        <bdi dir="auto">{tool.instrument}</bdi>
      </th>
      {COLUMNS.map((each) => (
        <td key={each.column} data-label={each.label}>
          <EditField
            kind="instrument"
            row={tool.row}
            of={tool.instrument}
            inTable
            words={each.column === 'kind' ? usualKinds() : undefined}
            {...each}
          />
        </td>
      ))}
      <td class="taken" data-label="Taken as">
        {refused ? <b>refused for heavy cable</b> : <Taken trial={trial} tool={tool} />}
      </td>
      <td class="act">
        {!refused && (
          <button
            type="button"
            class="link"
            aria-label={`Check ${tool.instrument} against a known thing`}
            onClick={onCheck}
          >
            check
          </button>
        )}
        <PutAside
          about="instrument"
          which={tool.instrument}
          name={tool.instrument}
          along="Its checks go with it; what was read with it counts on, with a usual limit of error."
        />
      </td>
    </tr>
  );
}

function Taken({ trial, tool }: { trial: Trial; tool: Instrument }) {
  const unit = tool.row.unit ?? '';
  const { known, zeros } = checksOf(trial, tool);
  const span = zeroSpan(tool, zeros);
  const symbol = findUnit(unit)?.symbol ?? unit;
  return (
    <>
      <b>{limitWords(tool.limit, unit)}</b> {limitSource(tool.limit)}
      {known.length > 0 && (
        <span class="note">{known.length === 1 ? 'by one check' : `by ${known.length} checks`}</span>
      )}
      {zeros.length > 0 && (
        <span class="note">
          {span === null
            ? 'one zero on record; a second one shows the drift'
            : `${zeros.length} zeros, ${Number(span.toPrecision(3))} ${symbol} apart`}
        </span>
      )}
      <ChecksOnRecord trial={trial} tool={tool} />
    </>
  );
}

/** Every check of a tool, those that a later one has overtaken too, each with the way to take it back. */
function ChecksOnRecord({ trial, tool }: { trial: Trial; tool: Instrument }) {
  const own = trial.checks.filter(({ instrument }) => instrument === tool.instrument);
  const { known, zeros } = checksOf(trial, tool);
  const counting = new Set([...known, ...zeros].map(({ check }) => check));
  if (own.length === 0) return null;
  return (
    <details class="checks-on-record">
      <summary>{own.length === 1 ? 'the check' : 'the checks'}</summary>
      <ul>
        {own.map(({ check, row }) => (
          <li key={check}>
            <span>
              {checkWords(row)}
              {(row.at ?? '') !== '' && <span class="note"> {row.at!.slice(0, 10)}</span>}
              {!counting.has(check) && <span class="note"> overtaken by a later one</span>}
            </span>{' '}
            <PutAside
              about="check"
              which={check}
              name={`the check of ${tool.instrument} that ${checkWords(row)}`}
              along="The limit of the tool is taken without it; plan and findings follow."
              usual={['typed wrong', 'wrong unit', 'read before it had settled']}
            />
          </li>
        ))}
      </ul>
    </details>
  );
}

function AddTool({ trial }: { trial: Trial }) {
  const list = toolsToAdd(trial);
  const [chosen, setChosen] = useState('');
  const tool = list.find((each) => each.tool === chosen) ?? list[0];
  if (tool === undefined) return null;
  return (
    <div class="buttons add">
      <label>
        <span class="hidden">Tool to add</span>
        <select value={tool.tool} onChange={(event) => setChosen(event.currentTarget.value)}>
          {list.map((each) => (
            <option key={each.tool} value={each.tool}>
              {each.tool}, step {each.resolution} {findUnit(each.unit)?.symbol ?? each.unit}
            </option>
          ))}
        </select>
      </label>
      <button
        type="button"
        class="button"
        onClick={() => {
          setChosen('');
          void addTool(trial, tool);
        }}
      >
        Add this tool
      </button>
    </div>
  );
}
