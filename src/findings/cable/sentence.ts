import type { ReadLabel } from '../claims/label.ts';
import { isWide, plusMinus } from '../measured.ts';
import type { CableFindings, Claim } from '../schema.ts';

type Parts = Pick<
  CableFindings,
  | 'name'
  | 'role'
  | 'claims'
  | 'metal_found'
  | 'copper_of_claim'
  | 'metal_of_claim'
  | 'consistency'
  | 'copper_share'
  | 'conductor_area'
  | 'conducts_like'
>;

const percent = (x: number) => `${Math.round(100 * x)} %`;

/** `103 ± 1 %`, to whole per cent or to a tenth when the ± is smaller. */
function share(m: { value: number; interval: [number, number] }): string {
  if (isWide(m)) return `${Math.floor(100 * m.interval[0])} to ${Math.ceil(100 * m.interval[1])} %`;
  const half = plusMinus(m) * 100;
  const digits = half < 0.95 ? 1 : 0;
  return `${(100 * m.value).toFixed(digits)} ± ${half.toFixed(digits)} %`;
}

const claimNamed = (claims: readonly Claim[], reading: string) => claims.find((c) => c.reading === reading);

function aboutMetal(p: Parts, label: ReadLabel): string | null {
  const metal = claimNamed(p.claims, 'metal');
  if (metal?.outcome !== 'falls short' || !p.metal_found) return null;
  const skin = p.copper_share ? `, about ${percent(p.copper_share.value)} copper by volume` : '';
  return `Label says ${label.metal.metal}; we found ${p.metal_found}${skin}.`;
}

/** Shares of the claim beyond which the readings, not the cable, are in question. */
const FAR_ABOVE = 1.7;
const FAR_BELOW = 0.25;

function farOff(m: { value: number }, slipToCheck: (share: number) => string): string {
  if (m.value > FAR_ABOVE) return ` That is more than such a cable can hold: check ${slipToCheck(m.value)}.`;
  if (m.value < FAR_BELOW) return ` That is very little: check ${slipToCheck(m.value)}.`;
  return '';
}

function aboutCopper(p: Parts, label: ReadLabel, slipToCheck: (share: number) => string): string {
  const held = claimNamed(p.claims, 'copper held');
  const m = p.copper_of_claim;
  if (!held || !m) return '';
  const condition = m.condition ? `, ${m.condition}` : '';
  const claimed = label.vague
    ? 'of the copper that an AWG cable of that number holds'
    : 'of the copper that its label claims';
  const figure = `${share(m)} ${claimed}${condition}`;
  const doubt = p.metal_found === 'copper-clad aluminium' ? '' : farOff(m, slipToCheck);
  if (held.outcome === 'meets') return `Holds ${figure}.${doubt}`;
  if (held.outcome === 'falls short') return `Holds ${figure}: falls short.${doubt}`;
  return `Holds ${figure}; whether that is enough is not settled.${doubt}`;
}

/**
 * The finding about one piece in one or two plain sentences. It speaks of this piece, never of anybody's intent.
 *
 * @param slipToCheck of the share found: which readings to look at again where it is far off
 */
export function cableSentence(p: Parts, label: ReadLabel, slipToCheck: (share: number) => string): string {
  if (!p.conductor_area) return 'Nothing has been measured on this piece that tells what is inside.';
  const parts = [aboutMetal(p, label), aboutCopper(p, label, slipToCheck)].filter(Boolean) as string[];
  const notCopper = p.metal_found === 'copper-clad aluminium' || p.metal_found === 'aluminium';
  if (parts.length === 0) {
    const claim = p.metal_of_claim;
    const metal = p.metal_found ? ` of ${p.metal_found}` : '';
    parts.push(
      claim
        ? `Holds ${share(claim)} of the metal area that its label claims${metal ? `;${metal.slice(3)} was found` : ''}.`
        : `${p.conductor_area.value.toFixed(1)} mm²${metal}; the label gives no area to judge it by.`,
    );
  } else if (notCopper && p.metal_of_claim)
    parts.push(
      `Its metal fills ${share(p.metal_of_claim)} of the claimed area${p.conducts_like ? `, and it ${p.conducts_like}` : ''}.`,
    );
  if (p.consistency?.recheck) parts.push(p.consistency.sentence);
  return parts.join(' ');
}
