/** A small club's bench for the tests of this folder: what was said, one line after the other, and what follows from it. */
import { type FindingsOptions, findingsOf } from '../../src/findings/findings.ts';
import type { CableFindings, Findings } from '../../src/findings/schema.ts';
import type { Entry, EntryKind } from '../../src/journal/entry.ts';
import { fold } from '../../src/trial/fold.ts';

type Cells = Readonly<Record<string, string>>;

/** Bare copper as the assay expects it: lay factor, kg/m³, Ω·m at 20 °C. */
export const COPPER = { lay: Math.exp(0.034), density: 8890, resistivity: 1.7241e-8 / 1.004 };
export const CLAD = { lay: Math.exp(0.034), density: 3480, resistivity: 2.68e-8 };
export const SOLID = { lay: 1, density: 8890, resistivity: 1.7241e-8 / 1.004 };
export interface Inside {
  lay: number;
  density: number;
  resistivity: number;
}

/** g per mm of cable. */
export const gramsPerMm = (mm2: number, m: Inside = COPPER) => (mm2 * m.lay * m.density) / 1e6;
/** mΩ per mm of cable at 20 °C. */
export const milliohmsPerMm = (mm2: number, m: Inside = COPPER) => (m.resistivity * m.lay * 1e6) / mm2;

export class Bench {
  readonly entries: Entry[] = [];
  private readings = 0;

  constructor(trial: Cells = {}) {
    this.say('trial', { trial: 'club', title: 'Fenwater Rally Club, heavy cable', ...trial });
  }

  /** One more entry, its id after all others. */
  say(kind: EntryKind, body: Cells): this {
    const number = (this.entries.length + 1).toString(16).padStart(12, '0');
    const id = `00000000-0000-7000-8000-${number}`;
    this.entries.push({ id, trial: 'club', kind, at: '2026-10-03T09:00:00Z', by: '', device: '', body });
    return this;
  }

  tool(instrument: string, kind: string, resolution: string, unit: string, limit: Cells = {}): this {
    return this.say('instrument', { instrument, kind, resolution, unit, ...limit });
  }

  /** Scale ±0.03 g, rule ±0.5 mm, meter ±(0.5 % + 2 µΩ), thermometer ±1 K, micrometer ±4 µm: limits stated. */
  carefulTools(): this {
    return this.tool('scale', 'pocket scale', '0.01', 'g', { max_error: '0.03' })
      .tool('rule', 'steel rule', '0.5', 'mm', { max_error: '0.5' })
      .tool('meter', 'four-wire meter', '0.001', 'mohm', { max_error: '0.002', max_error_percent: '0.5' })
      .tool('thermometer', 'thermometer', '0.1', 'C', { max_error: '1' })
      .tool('micrometer', 'micrometer', '0.001', 'mm', { max_error: '0.004' });
  }

  cable(cable: string, claimed_size: string, claimed_metal = '', more: Cells = {}): this {
    return this.say('cable', { cable, maker: cable, claimed_size, claimed_metal, ...more });
  }

  piece(specimen: string, cable: string, more: Cells = {}): this {
    return this.say('specimen', { specimen, cable, kind: 'apart', ...more });
  }

  read(specimen: string, quantity: string, value: string, unit: string, more: Cells = {}): this {
    this.readings++;
    return this.say('reading', { reading: `r${this.readings}`, specimen, quantity, value, unit, ...more });
  }

  /** Mass of so much of the metal over a length, by scale and rule. */
  weigh(specimen: string, mm2: number, inside = COPPER, length = 300, times = 1): this {
    const grams = (gramsPerMm(mm2, inside) * length * times).toFixed(2);
    return this.read(specimen, 'conductor_length', length.toFixed(1), 'mm', { instrument: 'rule' }).read(
      specimen,
      'conductor_mass',
      grams,
      'g',
      { instrument: 'scale' },
    );
  }

  ohm(specimen: string, mm2: number, inside = COPPER, over = 1000, extra = 0, more: Cells = {}): this {
    const milliohms = (milliohmsPerMm(mm2, inside) * over + extra).toFixed(3);
    return this.read(specimen, 'resistance', milliohms, 'mohm', {
      instrument: 'meter',
      at_length: String(over),
      at_length_unit: 'mm',
      temperature: '20.0',
      ...more,
    });
  }

  strands(specimen: string, mm2: number, count: number, counted = count): this {
    const diameter = Math.sqrt((4 * mm2) / (Math.PI * count)).toFixed(3);
    this.read(specimen, 'strand_count', String(counted), '');
    for (let i = 0; i < 6; i++) this.read(specimen, 'strand_diameter', diameter, 'mm', { instrument: 'micrometer' });
    return this;
  }

  /** Weighed, ohmed and gauged: everything agrees. */
  everything(specimen: string, mm2: number, inside = COPPER): this {
    return this.weigh(specimen, mm2, inside).ohm(specimen, mm2, inside).strands(specimen, mm2, 665);
  }

  seen(cable: string, seen: string, look = 'scraped_strand', more: Cells = {}): this {
    return this.say('evidence', { cable, look, seen, ...more });
  }

  findings(options: FindingsOptions = {}): Findings {
    return findingsOf(fold(this.entries), { draws: 0, ...options });
  }

  /** Findings of one cable. */
  of(cable: string): CableFindings {
    return cableOf(this.findings(), cable);
  }
}

export function cableOf(findings: Findings, cable: string): CableFindings {
  const found = findings.cables.find((c) => c.cable === cable);
  if (!found) throw new Error(`no findings for ${cable}`);
  return found;
}

/** One cable called x with one piece called p. */
export function oneCable(size = '2 AWG', metal = 'OFC', more: Cells = {}): Bench {
  return new Bench().carefulTools().cable('x', size, metal, more).piece('p', 'x');
}

export const claimOf = (c: CableFindings, reading: string) => c.claims.find((claim) => claim.reading === reading);
export const outcomes = (c: CableFindings) =>
  Object.fromEntries(c.claims.map((claim) => [claim.reading, claim.outcome]));
export const halfWidth = (m: { interval: [number, number] }) => (m.interval[1] - m.interval[0]) / 2;
export const codes = (f: Findings, cable: string | null = null) =>
  f.warnings.filter((w) => cable === null || w.cable === cable).map((w) => w.code);
