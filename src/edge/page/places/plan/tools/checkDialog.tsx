import { useEffect, useId, useState } from 'preact/hooks';
import { KNOWN_THINGS } from '../../../../../journal/kinds/check.ts';
import type { Instrument } from '../../../../../trial/trial.ts';
import { findUnit } from '../../../../../units/unit.ts';
import { Dialog } from '../../../parts/dialog.tsx';
import { type Troubles, troubleSentence } from '../../../store/plan/correct.ts';
import { type CheckAnswers, doubtOf, offBy, sayCheck } from '../../../store/plan/tools.ts';

const BLANK: CheckAnswers = { against: '', known: '', knownError: '', read: '', temperature: '', note: '' };

/** What a bench has at hand to hold each kind of tool against. */
const ADVICE: Readonly<Record<string, string>> = {
  mass: 'No check weight? A measured volume of water at room temperature weighs 1 g for each millilitre, to about half a per cent.',
  length:
    'No gauge block? A ball from a bearing has its diameter to a few thousandths of a millimetre; jaws closed are a zero.',
  resistance:
    'No reference resistor? Plain solid copper building wire of a known gauge, at a known temperature, over a metre. Clips shorted are a zero.',
  temperature: 'Crushed ice in clean water is 0 °C; stir it.',
};

/** Asks what a tool was held against and what it read, and says it as a check of the tool. */
export function CheckDialog({ tool, onClose }: { tool: Instrument; onClose: () => void }) {
  const [answers, setAnswers] = useState<CheckAnswers>({ ...BLANK, against: usualThing(tool) });
  const [troubles, setTroubles] = useState<Troubles>({});
  /** The question that was put before this check is kept; empty while none is open. */
  const [asked, setAsked] = useState('');
  useEffect(() => {
    const back = document.activeElement;
    return () => {
      if (back instanceof HTMLElement) back.focus();
    };
  }, []);
  const unit = findUnit(tool.row.unit ?? '')?.symbol ?? tool.row.unit ?? '';
  const zero = answers.against === 'zero';
  const set = (name: keyof CheckAnswers) => (text: string) => {
    setAsked('');
    setAnswers({ ...answers, [name]: text });
  };
  const keep = async (event: Event) => {
    event.preventDefault();
    const doubt = doubtOf(tool, answers);
    if (doubt !== '' && asked === '') {
      setAsked(doubt);
      return;
    }
    const refused = await sayCheck(tool, answers);
    setTroubles(refused ?? {});
    if (refused === null) onClose();
  };
  return (
    <Dialog title={`Hold ${tool.instrument} against something known`} onClose={onClose}>
      <form onSubmit={(event) => void keep(event)}>
        <p class="note">{ADVICE[findUnit(tool.row.unit ?? '')?.dimension ?? ''] ?? ''}</p>
        <label class="edit">
          <span>Held against</span>
          <select value={answers.against} onChange={(event) => set('against')(event.currentTarget.value)}>
            {KNOWN_THINGS.map((thing) => (
              <option key={thing} value={thing}>
                {thing === 'zero' ? 'its zero: nothing on it, jaws closed, clips shorted' : thing}
              </option>
            ))}
          </select>
        </label>
        {!zero && (
          <Ask
            label={`What that is, ${unit}`}
            value={answers.known}
            onType={set('known')}
            trouble={troubles.known_value}
          />
        )}
        {!zero && (
          <Ask
            label={`How far that may be off, ${unit}`}
            hint="or as its paper prints it: 0.1 %; blank for not at all"
            value={answers.knownError}
            onType={set('knownError')}
            trouble={troubles.known_error}
          />
        )}
        <Ask
          label={`What the tool read, ${unit}`}
          value={answers.read}
          onType={set('read')}
          trouble={troubles.read_value}
        />
        <Ask
          label="Temperature of both"
          hint="such as 20 C; may be blank"
          value={answers.temperature}
          onType={set('temperature')}
          trouble={troubles.temperature}
        />
        <p role="status">{asked === '' ? offWords(offBy(tool, answers), unit) : ''}</p>
        {Object.entries(troubles)
          .filter(([column]) => !['known_value', 'known_error', 'read_value', 'temperature'].includes(column))
          .map(([column, trouble]) => (
            <p key={column} class="trouble" role="alert">
              {troubleSentence(trouble)}
            </p>
          ))}
        {asked !== '' && (
          <p class="asked" role="alert">
            {asked}
          </p>
        )}
        <div class="buttons">
          <button type="submit" class="button main">
            {asked === '' ? 'Keep this check' : 'It did read that: keep it'}
          </button>
          <button type="button" class="button" onClick={onClose}>
            Leave it
          </button>
        </div>
      </form>
    </Dialog>
  );
}

interface AskProps {
  label: string;
  hint?: string;
  value: string;
  onType: (text: string) => void;
  trouble: Troubles[string] | undefined;
}

function Ask({ label, hint = '', value, onType, trouble }: AskProps) {
  const id = useId();
  return (
    <div class="edit">
      <label for={id}>
        {label}
        {hint !== '' && <span class="hint">{hint}</span>}
      </label>
      <input
        id={id}
        value={value}
        autocomplete="off"
        inputMode="text"
        aria-invalid={trouble === undefined ? undefined : 'true'}
        aria-describedby={trouble === undefined ? undefined : `${id}-trouble`}
        onInput={(event) => onType(event.currentTarget.value)}
      />
      {trouble !== undefined && (
        <p class="trouble" id={`${id}-trouble`} role="alert">
          {troubleSentence(trouble)}
        </p>
      )}
    </div>
  );
}

function usualThing(tool: Instrument): string {
  const things: Readonly<Record<string, string>> = {
    mass: 'check weight',
    length: 'gauge block',
    resistance: 'reference resistor',
  };
  return things[findUnit(tool.row.unit ?? '')?.dimension ?? ''] ?? 'other';
}

function offWords(off: number | null, unit: string): string {
  if (off === null) return '';
  if (off === 0) return 'It read what it should.';
  return `It read ${Number(Math.abs(off).toPrecision(3))} ${unit} too ${off > 0 ? 'high' : 'low'}.`;
}
