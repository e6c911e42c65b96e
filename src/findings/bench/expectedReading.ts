import { bundleDiameter, copperPerMetre, ohmsPerMetre } from '../../methods/decide/conductorSize.ts';
import {
  ALUMINIUM_DENSITY,
  ALUMINIUM_RESISTIVITY,
  COPPER_DENSITY,
  COPPER_RESISTIVITY,
} from '../../methods/metal/constants.ts';
import type { Cable, Trial } from '../../trial/trial.ts';
import { readLabel } from '../claims/label.ts';
import { cutLengthOf, lengthsOf, SAME_LENGTH } from './pieceLength.ts';

/** What a label and a piece let a reading be, SI: outside of it lies a slip rather than a cable. */
export interface Expected {
  least: number;
  most: number;
  /** What sound copper of the label would read, by each length that the piece may have; empty where that is nothing certain. */
  middles: readonly number[];
  /** What reads so, for the sentence: 'a piece that was cut to 730 mm'. */
  words: string;
}

/** A span without what it is of. */
type Span = Omit<Expected, 'words'>;

/** Cables that hold less than a third, or more than twice, of what their label says are not what a slip is told from. Ours. */
const SHORT = 1 / 3;
const OVER = 2;
/** Solid aluminium weighs and conducts so much less than copper. */
const LIGHTEST = ALUMINIUM_DENSITY / COPPER_DENSITY;
const POOREST = ALUMINIUM_RESISTIVITY / COPPER_RESISTIVITY;
/** Areas of any cable that a hand can strip, m²: for labels that name none. Ours. */
const ANY_AREA = { least: 0.5e-6, most: 1000e-6 };
/** Whole cable and jacket against the copper of the label: a thick jacket on a thin cable can weigh more than the copper. Ours. */
const WITH_JACKET = 4;
const THINNEST_JACKET = 0.01;
/** Strands of stranded conductors are not finer, m. Common practice, no source. */
const FINEST_STRAND = 0.04e-3;
/** Contacts stand at least so far apart, as a share of the piece: short spans throw the reading away. Ours. */
const NEAREST_CONTACTS = 0.1;
/** A tape or a saw is off by less than this share. Ours. */
const BEYOND = 1.03;
/** A wall is no thinner, m, and no thicker than so many bundles. Ours. */
const THINNEST_WALL = 0.1e-3;

interface Asked {
  trial: Trial;
  cable: Cable;
  specimen: string;
  /** Distance between the voltage contacts, m; null when not said. */
  contacts: number | null;
}

const within = (middle: number, factor: number): Span => ({
  least: middle / factor,
  most: middle * factor,
  middles: [middle],
});

function areasOf(cable: Cable): Span {
  const area = readLabel(cable.label).area;
  return area === null ? { ...ANY_AREA, middles: [] } : { least: area * SHORT, most: area * OVER, middles: [area] };
}

/** What any of the lengths lets expect. */
function alongLengths(lengths: readonly number[], perMetre: Span): Span | null {
  if (lengths.length === 0) return null;
  const { least, most, middles } = perMetre;
  return {
    least: least * Math.min(...lengths),
    most: most * Math.max(...lengths),
    middles: middles.flatMap((middle) => lengths.map((length) => middle * length)),
  };
}

function copperSpan(cable: Cable): Span {
  const { least, most, middles } = areasOf(cable);
  return {
    least: LIGHTEST * copperPerMetre(least),
    most: copperPerMetre(most),
    middles: middles.map(copperPerMetre),
  };
}

function massSpan(asked: Asked, quantity: string): Span | null {
  const { trial, cable, specimen } = asked;
  const metal = copperSpan(cable);
  const lengths = lengthsOf(trial, specimen);
  if (quantity === 'conductor_mass') return alongLengths(lengths, metal);
  const least = quantity === 'jacket_mass' ? metal.least * THINNEST_JACKET : metal.least;
  return alongLengths(lengths, { least, most: (metal.most / OVER) * WITH_JACKET, middles: [] });
}

/** Without a contact distance the contacts may stand anywhere on the piece. */
function ohmsSpan({ trial, cable, specimen, contacts }: Asked): Span | null {
  const { least, most, middles } = areasOf(cable);
  const perMetre = {
    least: ohmsPerMetre(most),
    most: POOREST * ohmsPerMetre(least),
    middles: middles.map(ohmsPerMetre),
  };
  if (contacts !== null) return alongLengths([contacts], perMetre);
  const piece = cutLengthOf(trial, specimen);
  return piece === null
    ? null
    : { least: perMetre.least * piece * NEAREST_CONTACTS, most: perMetre.most * piece, middles: [] };
}

/** How many times wider or narrower than labelled a diameter may be. Ours. */
const LABELLED_WIDTH = 2;
/** Times the bundle that the label's area makes: a bundle pressed or loose, a cable with the thickest jacket. Ours. */
const WIDEST = { bundle: 2, cable: 4, wall: 1.5 };

function widthSpan({ cable }: Asked, quantity: string): Span {
  const { least, most } = areasOf(cable);
  const { strands, strandDiameter, outerDiameter } = cable.label;
  const solid = Math.sqrt((4 * least) / Math.PI);
  const bundle = bundleDiameter(most / OVER);
  if (quantity === 'outer_diameter')
    return outerDiameter === null
      ? { least: solid, most: WIDEST.cable * bundle, middles: [] }
      : within(outerDiameter, LABELLED_WIDTH);
  if (quantity === 'conductor_diameter') return { least: solid, most: WIDEST.bundle * bundle, middles: [] };
  if (quantity === 'wall_thickness') return { least: THINNEST_WALL, most: WIDEST.wall * bundle, middles: [] };
  if (strandDiameter !== null) return within(strandDiameter, LABELLED_WIDTH);
  const one = Math.sqrt((4 * most) / Math.PI);
  return strands === null
    ? { least: FINEST_STRAND, most: one, middles: [] }
    : { least: solid / Math.sqrt(strands), most: one / Math.sqrt(strands), middles: [] };
}

function strandsSpan({ cable }: Asked): Span {
  const { strands, strandDiameter } = cable.label;
  if (strands !== null) return { least: strands / OVER, most: strands * OVER, middles: [strands] };
  const { least, most } = areasOf(cable);
  const section = (diameter: number) => (Math.PI / 4) * diameter ** 2;
  return strandDiameter === null
    ? { least: 1, most: most / section(FINEST_STRAND), middles: [] }
    : { least: least / section(strandDiameter), most: most / section(strandDiameter), middles: [] };
}

const MASSES: ReadonlySet<string> = new Set(['specimen_mass', 'conductor_mass', 'jacket_mass']);
const WIDTHS: ReadonlySet<string> = new Set([
  'outer_diameter',
  'conductor_diameter',
  'wall_thickness',
  'strand_diameter',
]);
/** Lengths that are the piece's own, and such as cannot be longer than the piece. */
const OWN_LENGTHS: ReadonlySet<string> = new Set(['specimen_length', 'conductor_length']);
const ON_THE_PIECE: ReadonlySet<string> = new Set(['overhang', 'tip_drop', 'push_span', 'lay_length']);

function ofTheLabel(asked: Asked, quantity: string): Span | null {
  if (MASSES.has(quantity)) return massSpan(asked, quantity);
  if (quantity === 'resistance') return ohmsSpan(asked);
  if (quantity === 'strand_count') return strandsSpan(asked);
  return WIDTHS.has(quantity) ? widthSpan(asked, quantity) : null;
}

const millimetres = (metres: number) => `${Number((metres * 1000).toPrecision(4))} mm`;

function labelWords(cable: Cable): string {
  const size = cable.label.size.trim();
  return readLabel(cable.label).area === null || size === '' ? 'any cable' : `a cable labelled ${size}`;
}

/**
 * What a reading of a quantity on a piece can be by its cable's label (with either metal) and by the piece's own length, SI;
 * null where neither says anything.
 *
 * @param contacts distance between the voltage contacts, m; null when not said
 */
export function expectedReading(
  trial: Trial,
  specimen: string,
  quantity: string,
  contacts: number | null,
): Expected | null {
  const length = cutLengthOf(trial, specimen);
  if (length !== null && OWN_LENGTHS.has(quantity))
    return { ...within(length, SAME_LENGTH), words: `a piece of ${millimetres(length)}` };
  if (length !== null && ON_THE_PIECE.has(quantity))
    return { least: 0, most: length * BEYOND, middles: [], words: `a piece of ${millimetres(length)}` };
  const cable = trial.cables.find(
    (each) => each.cable === trial.specimens.find((piece) => piece.specimen === specimen)?.cable,
  );
  if (cable === undefined) return null;
  const span = ofTheLabel({ trial, cable, specimen, contacts }, quantity);
  return span && { ...span, words: labelWords(cable) };
}

/** Where the voltage contacts of a piece can stand, m; null when its length is not on record. */
export function expectedContacts(trial: Trial, specimen: string): Expected | null {
  const length = cutLengthOf(trial, specimen);
  if (length === null) return null;
  const words = `a piece of ${millimetres(length)}`;
  return { least: length * NEAREST_CONTACTS, most: length * BEYOND, middles: [], words };
}
