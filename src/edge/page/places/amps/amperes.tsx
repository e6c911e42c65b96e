import type { Findings } from '../../../../findings/schema.ts';
import type { Current } from '../../../../findings/shapes/current.ts';
import { cautionsFor } from '../../../../methods/current/cautions.ts';
import { carryingStrip, resistanceStrip } from '../../../../report/amps/ampsPictures.ts';
import { type AmpsStrip, ampsStrip } from '../../../../report/amps/ampsStrip.ts';
import { variablesTheme } from '../../../../report/theme.ts';
import { noBreak } from '../../../../report/words/noBreak.ts';
import { Picture } from '../../parts/picture.tsx';
import { useWidth } from '../../parts/useWidth.ts';
import { ampsRoute } from '../../store/amps/openInAmps.ts';
import { PAPER_WIDTH, printing } from '../../store/media.ts';
import { addressOf } from '../../store/routeOf.ts';
import { units } from '../../store/units.ts';
import { Warnings } from '../inside/warnings.tsx';
import { AmpsCables } from './ampsCables.tsx';
import { HowWeKnowAmps } from './howWeKnowAmps.tsx';

interface AmperesProps {
  trial: string;
  findings: Findings;
  current: Current;
  /** The cable whose sheet is open. */
  open: string | null;
}

/** Codes of what is worth knowing about current alone. */
const ABOUT_CURRENT = /^(?:four-wire|heating|log|thermometer)-/;

/** What the cables do under current: ohms, heat, and what each carries. */
export function Amperes({ trial, findings, current, open }: AmperesProps) {
  const warnings = findings.warnings.filter((w) => ABOUT_CURRENT.test(w.code));
  const clad = findings.cables.some((c) => /aluminium/.test(c.metal_found ?? ''));
  const cautions = cautionsFor('fuse', 'terminals', ...(clad ? (['clad aluminium'] as const) : []));
  const link = (what: 'run' | 'heat' | 'log') => addressOf(ampsRoute(trial, { what }));
  return (
    <>
      <header class="amps-lead">
        <h1>{noBreak(current.sentence || 'No cable is known well enough to say what it carries.')}</h1>
        <p class="buttons">
          <a class="button main" href={link('run')}>
            Run check
          </a>
          <a class="button" href={link('heat')}>
            Heating test
          </a>
          <a class="button" href={link('log')}>
            Bring a log
          </a>
        </p>
      </header>
      <Strips findings={findings} current={current} />
      <AmpsCables trial={trial} findings={findings} current={current} open={open} />
      <section class="amps-cautions" aria-labelledby="amps-cautions">
        <h2 id="amps-cautions">{current.estimate}</h2>
        <ul>
          {cautions.map((text) => (
            <li key={text}>{noBreak(text)}</li>
          ))}
        </ul>
      </section>
      <Warnings findings={{ ...findings, warnings }} />
      <HowWeKnowAmps current={current} />
    </>
  );
}

const FIRST_WIDTH = 640;

function Strips({ findings, current }: { findings: Findings; current: Current }) {
  const ohms = resistanceStrip(findings.cables, units.value);
  const carrying = carryingStrip(current, findings.cables);
  const at = current.cables.find((c) => c.role !== 'control' && c.carrying !== null)?.carrying ?? null;
  return (
    <div class="amps-strips">
      {carrying !== null && at !== null && (
        <Strip
          title="Carries"
          unit={`A in still air at ${at.ambient_C.toFixed(0)} °C, until the jacket’s rating`}
          strip={carrying}
        />
      )}
      {ohms !== null && <Strip title="Resistance" unit={`${ohms.unit} at 20 °C`} strip={ohms} />}
    </div>
  );
}

/** A strip with its head, as wide as its place. */
export function Strip({ title, unit, strip }: { title: string; unit: string; strip: AmpsStrip }) {
  const [place, measuredWidth] = useWidth<HTMLDivElement>(FIRST_WIDTH);
  const width = printing.value ? Math.min(measuredWidth, PAPER_WIDTH) : measuredWidth;
  return (
    <section ref={place}>
      <h2 class="strip-title">
        {title} <span class="unit">{noBreak(unit)}</span>
      </h2>
      <Picture svg={ampsStrip(strip, { width, theme: variablesTheme })} />
    </section>
  );
}
