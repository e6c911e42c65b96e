import type { Claim, Outcome } from '../findings/schema.ts';
import { ruledRing } from './hatch.ts';
import { circle, element, group, round, svgDocument } from './svg.ts';
import type { Theme } from './theme.ts';

/** What the mark compares: the area of the metal with the size claimed, or copper's share with the metal claimed. */
export type MarkKind = 'size' | 'metal';

export interface MarkInput {
  outcome: Outcome;
  kind: MarkKind;
  /** Metal found over the claim's requirement, as areas; copper's share of the metal for a metal claim. */
  share: number;
  /** The same at both ends of the interval. */
  interval: readonly [number, number];
}

export interface MarkOptions {
  /** Width and height, px; 14 in tables. */
  size: number;
  theme: Theme;
  as?: 'group' | 'picture';
}

/** Ring line as a share of the mark, and the least that is seen, px. */
const RING_SHARE = 0.075;
const LEAST_RING = 1.25;
/** Dashes round the ring: few enough to be seen as dashes at 14 px, and the part of each step that is drawn. */
const DASHES = 12;
const DRAWN = 0.6;
/** Gap and rim are never drawn narrower than this, px or share of the ring: a truth finer than a pixel says nothing. */
const LEAST_GAP = { px: 1.7, share: 0.1 };
const LEAST_RIM = { px: 2.4, share: 0.18 };
/** A disc is never smaller than this share of the ring, so that it stays a disc. */
const LEAST_DISC = 0.16;
/** Distance of the strokes across a rim, px. */
const RIM_STEP = 2.3;

interface Pen {
  /** Centre, px. */
  c: number;
  /** Radius of the ring's line and its width, px. */
  ring: number;
  width: number;
  theme: Theme;
}

/**
 * The outcome as a small cut face: a dashed ring for the claim, the metal inside as a disc of its true area. *Meets*: the
 * disc reaches the ring. *Falls short*: a bare gap. *Not settled*: the disc has a hatched rim as wide as the interval.
 * In small marks gap and rim are kept wide enough to be seen. The word always stands beside the mark, so the mark itself
 * is passed over by a screen reader.
 */
export function outcomeMark(input: MarkInput, { size, theme, as = 'picture' }: MarkOptions): string {
  const width = Math.max(LEAST_RING, RING_SHARE * size);
  const pen: Pen = { c: size / 2, ring: (size - width) / 2, width, theme };
  const drawn = group({}, ...(input.kind === 'metal' ? metalMark(input, pen) : sizeMark(input, pen)));
  return as === 'group' ? drawn : svgDocument({ width: size, height: size, description: '' }, drawn);
}

function sizeMark({ outcome, share, interval }: MarkInput, pen: Pen): string[] {
  if (outcome === 'meets') return [disc(pen, pen.ring), claimedRing(pen, pen.theme.ink)];
  const inside = pen.ring - pen.width / 2;
  if (outcome === 'falls short') {
    return [disc(pen, Math.min(inside - least(LEAST_GAP, pen), radius(share, pen))), claimedRing(pen, pen.theme.ink)];
  }
  const outer = Math.min(pen.c, Math.max(inside, radius(interval[1], pen)));
  const inner = Math.min(outer - least(LEAST_RIM, pen), radius(interval[0], pen));
  return [hatchedRim(pen, outer, inner), disc(pen, inner), claimedRing(pen, pen.theme.ink2)];
}

/** Copper's share of the metal as a disc in the ring; what is not copper is ruled, as aluminium is everywhere. */
function metalMark({ outcome, share }: MarkInput, pen: Pen): string[] {
  if (outcome === 'meets') return [disc(pen, pen.ring), claimedRing(pen, pen.theme.ink)];
  const inside = pen.ring - pen.width / 2;
  if (outcome === 'not settled') return [hatchedRim(pen, inside, inside * 0.3), claimedRing(pen, pen.theme.ink2)];
  const r = Math.min(inside - least(LEAST_GAP, pen), radius(share, pen));
  const ruling = ruledRing(
    pen.c,
    pen.c,
    inside,
    Math.max(r, LEAST_DISC * pen.ring),
    Math.max(2.2, pen.ring * 0.22),
    'rising',
  );
  return [
    element('path', {
      d: ruling,
      stroke: pen.theme.aluLine,
      'stroke-width': Math.max(1, pen.width * 0.6),
      fill: 'none',
    }),
    disc(pen, r),
    claimedRing(pen, pen.theme.ink),
  ];
}

const least = (wanted: { px: number; share: number }, { ring }: Pen): number =>
  Math.max(wanted.px, wanted.share * ring);
const radius = (share: number, { ring }: Pen): number => ring * Math.sqrt(Math.max(0, share));

const disc = ({ c, ring, theme }: Pen, r: number): string =>
  circle(c, c, Math.max(r, LEAST_DISC * ring), { fill: theme.copper });

function claimedRing({ c, ring, width }: Pen, stroke: string): string {
  const step = (2 * Math.PI * ring) / DASHES;
  return circle(c, c, ring, {
    fill: 'none',
    stroke,
    'stroke-width': width,
    'stroke-dasharray': `${round(step * DRAWN)} ${round(step * (1 - DRAWN))}`,
  });
}

/** Slanting strokes across the rim, as a band of doubt. */
function hatchedRim({ c, theme }: Pen, outer: number, inner: number): string {
  const middle = (outer + inner) / 2;
  const count = Math.max(8, Math.round((2 * Math.PI * middle) / RIM_STEP));
  const slant = (outer - inner) / middle / 2;
  let d = '';
  for (let i = 0; i < count; i++) {
    const angle = (i / count) * 2 * Math.PI;
    d += `M${polar(c, inner, angle)}L${polar(c, outer, angle + slant)}`;
  }
  return element('path', { d, stroke: theme.copperLine, 'stroke-width': 0.9, fill: 'none' });
}

const polar = (c: number, r: number, angle: number): string =>
  `${round(c + r * Math.cos(angle))} ${round(c + r * Math.sin(angle))}`;

/**
 * The mark of a judged claim, or null when it has no outcome (not testable with these tools). `copperShare` is copper's
 * share of the metal found, which a claim on the metal shows. For a greatest resistance the share is limit over found, so
 * that in every mark a smaller disc means less metal.
 */
export function markOfClaim(claim: Claim, copperShare: number | null): MarkInput | null {
  if (claim.outcome === null) return null;
  if (claim.reading === 'metal') {
    const share = copperShare ?? (claim.outcome === 'meets' ? 1 : 0);
    return { outcome: claim.outcome, kind: 'metal', share, interval: [share, share] };
  }
  const { found, required } = claim;
  if (found === null || required === null || !(required > 0) || !(found.value > 0)) {
    return { outcome: claim.outcome, kind: 'size', share: 0, interval: [0, 1] };
  }
  const isGreatest = /ohm|Ω/.test(claim.unit ?? '');
  const over = (x: number): number => (isGreatest ? required / Math.max(x, Number.MIN_VALUE) : x / required);
  const [a, b] = [over(found.interval[0]), over(found.interval[1])];
  return { outcome: claim.outcome, kind: 'size', share: over(found.value), interval: [Math.min(a, b), Math.max(a, b)] };
}
