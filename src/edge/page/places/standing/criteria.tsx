import { useId, useState } from 'preact/hooks';
import type { CriterionFound } from '../../../../findings/shapes/decide.ts';
import { endOf, endText, unitOf } from '../../../../report/standing/criterionWords.ts';
import { endTrouble } from '../../../../report/standing/endRange.ts';
import { shareTyped } from '../../../../report/standing/shareTyped.ts';
import { readTypedNumber } from '../../../../units/typedNumber.ts';
import { isTried, scaleNow } from '../../store/standing/scaleNow.ts';
import { keepScales, moveShare, sharesNow, tryScale } from '../../store/standing/trying.ts';
import { NowFirst } from './nowFirst.tsx';
import type { Stood } from './order.tsx';
import { ValueCurveField } from './valueCurveField.tsx';

/** Every criterion that has a figure on some cable: how much it counts, and how its figures turn into worth. */
export function Criteria({ stood }: { stood: Stood }) {
  const criteria = stood.decide.criteria.map(scaleNow);
  const shares = sharesNow(stood);
  const loose = criteria.filter(({ fixed, weight }) => weight > 0 && !fixed);
  return (
    <section class="criteria">
      <h3>Criteria</h3>
      <p class="note">
        Everything that was found of two cables or more can count. The ends of a scale are fixed figures, so that no
        cable moves another’s worth. Take hold of an end, move it by the arrow keys, or type it.
      </p>
      {loose.length > 0 && (
        <p>
          <button type="button" class="button" onClick={() => void keepScales(criteria)}>
            Fix the scales that count in the trial
          </button>{' '}
          <span class="note">
            Not fixed yet: {loose.map(({ name }) => name.split(',')[0]!.toLowerCase()).join(', ')}.
          </span>
        </p>
      )}
      <ul>
        {criteria.map((criterion) => (
          <li key={criterion.id}>
            <Criterion criterion={criterion} share={shares.get(criterion.id) ?? 0} />
          </li>
        ))}
      </ul>
      <NowFirst stood={stood} always />
    </section>
  );
}

function Criterion({ criterion, share }: { criterion: CriterionFound; share: number }) {
  const id = useId();
  const { shape, worst, best, better } = criterion;
  const unit = unitOf(criterion);
  const set = (next: Partial<CriterionFound>) => tryScale(criterion.id, { shape, worst, best, ...next });
  return (
    <fieldset class="criterion">
      <legend>
        {criterion.name} {unit !== '' && <span class="unit">{unit}</span>}
      </legend>
      <ValueCurveField criterion={criterion} onSet={(scale) => tryScale(criterion.id, scale)} />
      <div class="criterion-fields">
        <Typed
          label="Counts"
          value={String(share)}
          onTyped={(typed) => {
            const read = shareTyped(typed);
            if ('trouble' in read) return read.trouble;
            moveShare(`one ${criterion.id}`, [criterion.id], read.share);
            return '';
          }}
        />
        {shape !== 'threshold' && (
          <End
            label="Worth nothing at"
            criterion={criterion}
            value={worst}
            other={best}
            onSet={(end) => set({ worst: end })}
          />
        )}
        <End
          label={shape === 'threshold' ? (better === 'more' ? 'At least' : 'At most') : 'Worth everything at'}
          criterion={criterion}
          value={best}
          other={shape === 'threshold' ? null : worst}
          onSet={(end) => set(shape === 'threshold' ? { best: end, worst: end + (worst - best) } : { best: end })}
        />
        <label for={`${id}k`}>
          Curve
          <select
            id={`${id}k`}
            value={shape}
            onChange={(event) => set({ shape: event.currentTarget.value as CriterionFound['shape'] })}
          >
            <option value="linear">straight</option>
            <option value="flat">then enough</option>
            <option value="threshold">all or nothing</option>
          </select>
        </label>
      </div>
      <p class="note">
        {isTried(criterion) ? 'Tried out here, not kept yet.' : criterion.fixed ? 'Fixed.' : 'Suggested.'}
      </p>
    </fieldset>
  );
}

interface EndProps {
  label: string;
  criterion: CriterionFound;
  value: number;
  /** The other end, which this one must not meet. */
  other: number | null;
  onSet: (end: number) => void;
}

/** One end of a scale, typed as people type numbers. */
function End({ label, criterion, value, other, onSet }: EndProps) {
  const commit = (typed: string): string => {
    const read = readTypedNumber(typed.replace(/\s*%$/, ''));
    const end = read.ok ? endOf(criterion, read.value.value) : Number.NaN;
    const trouble = endTrouble(criterion, typed, end);
    if (trouble !== '') return trouble;
    if (end === other) return 'The two ends of a scale must differ.';
    onSet(end);
    return '';
  };
  return <Typed label={label} value={endText(criterion, value)} onTyped={commit} />;
}

interface TypedProps {
  label: string;
  value: string;
  /** Takes what was typed, or answers why not in one sentence. */
  onTyped: (typed: string) => string;
}

/** A field for a number. What is not taken stays in it beside the sentence that says why. */
function Typed({ label, value, onTyped }: TypedProps) {
  const id = useId();
  const [draft, setDraft] = useState<string | null>(null);
  const [trouble, setTrouble] = useState('');
  const commit = (typed: string) => {
    const wrong = onTyped(typed);
    setTrouble(wrong);
    if (wrong === '') setDraft(null);
  };
  return (
    <label for={id}>
      {label}
      <input
        id={id}
        inputMode="decimal"
        autocomplete="off"
        value={draft ?? value}
        aria-invalid={trouble === '' ? undefined : 'true'}
        aria-describedby={trouble === '' ? undefined : `${id}-trouble`}
        onInput={(event) => setDraft(event.currentTarget.value)}
        onChange={(event) => commit(event.currentTarget.value)}
      />
      {trouble !== '' && (
        <span class="trouble" id={`${id}-trouble`} role="alert">
          {trouble}
        </span>
      )}
    </label>
  );
}
