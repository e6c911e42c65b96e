import { capital } from '../units/capital.ts';
import { numberWord } from '../units/numberWords.ts';
import { NO_CONTACT_DISTANCE, NO_RESISTANCE, NOT_WEIGHED } from './cable/missing.ts';
import { failsOnMetal, saidClaim, sizeClaim } from './cableOutcome.ts';
import type { CableFindings } from './schema.ts';

type Kind = 'meets' | 'short' | 'notCopper' | 'clad' | 'open' | 'unmeasured';

/** What one cable adds to the sentence: the metal first, for a wrong metal is no matter of size. */
function kindOf(c: CableFindings): Kind {
  if (!c.conductor_area) return c.consistency?.recheck ? 'open' : 'unmeasured';
  if (failsOnMetal(c))
    return c.metal_found === 'copper-clad aluminium' || c.metal_found === 'tinned clad aluminium'
      ? 'clad'
      : 'notCopper';
  const said = saidClaim(c)?.outcome;
  if (said === 'meets') return 'meets';
  return said === 'falls short' ? 'short' : 'open';
}

function plural(n: number, one: string, many: string): string {
  return `${numberWord(n)} ${n === 1 ? one : many}`;
}

/** What all of these cables lack, where they lack the same, as the reason why nothing is told of their copper. */
function reasonWhyOpen(open: readonly CableFindings[]): string {
  const all = (texts: readonly string[]) => open.every(({ missing }) => texts.some((text) => missing.includes(text)));
  if (open.every((c) => saidClaim(c) === null)) return 'no label gives a size to judge it by';
  if (all([NOT_WEIGHED])) return 'no piece was weighed';
  if (all([NO_RESISTANCE])) return 'no ohms were read';
  if (all([NO_CONTACT_DISTANCE, NO_RESISTANCE])) return 'no ohms count yet';
  if (open.every((c) => c.consistency?.recheck)) return 'their readings do not agree';
  return 'what was read does not settle it';
}

/** Sizes that are met by themselves, where nothing is told of the copper: a row says so, and this line must not deny it. */
function sizesMet(open: readonly CableFindings[]): string | null {
  const met = open.filter((c) => sizeClaim(c)?.outcome === 'meets').length;
  if (met === 0) return null;
  return `by size alone, ${plural(met, 'meets', 'meet')} what ${met === 1 ? 'its' : 'their'} label claims`;
}

/** Where nothing is told of any cable that was measured: that first, and why. */
function nothingTold(open: readonly CableFindings[], unmeasured: number): string {
  const of =
    unmeasured > 0
      ? `the ${numberWord(open.length)} measured`
      : open.length === 1
        ? 'this cable'
        : `these ${numberWord(open.length)} cables`;
  const others = unmeasured === 0 ? null : `${plural(unmeasured, 'was', 'were')} not measured`;
  const rest = [sizesMet(open), others].filter((part) => part !== null).join('; ');
  const first = `Nothing can be said yet of the copper in ${of}: ${reasonWhyOpen(open)}.`;
  return rest === '' ? first : `${first} ${capital(rest)}.`;
}

/**
 * The whole trial in one or two sentences: how many hold the copper that their label claims, and what of the others.
 *
 * @param otherwise whether anything but what is inside was read of them: how they bend, what jackets bear, what current does
 */
export function pageSentence(cables: readonly CableFindings[], otherwise = false): string {
  const judged = cables.filter((c) => c.role !== 'control');
  if (judged.length === 0) return 'No cable has been entered yet.';
  const count = (kind: Kind) => judged.filter((c) => kindOf(c) === kind).length;
  const n = judged.length;
  if (count('unmeasured') === n)
    return otherwise
      ? `What is inside ${n === 1 ? 'this cable' : `these ${numberWord(n)} cables`} has not been measured yet.`
      : `Nothing has been measured on ${n === 1 ? 'this cable' : `these ${numberWord(n)} cables`} yet.`;
  if (n === 1) return judged[0].sentence;
  const meets = count('meets');
  const open = judged.filter((c) => kindOf(c) === 'open');
  if (open.length + count('unmeasured') === n) return nothingTold(open, count('unmeasured'));
  // Not told is not found wanting: cables that are still open are never counted among those that were.
  const untold = meets === 0 && open.length > 0;
  const first = untold
    ? `Of the ${numberWord(n)} cables, `
    : meets === n
      ? `${n === 2 ? 'Both' : `All ${numberWord(n)}`} hold the copper that their label claims.`
      : meets === 0
        ? `${n === 2 ? 'Neither' : 'None'} of the ${numberWord(n)} is shown to hold the copper that its label claims.`
        : `${capital(plural(meets, 'of', 'of'))} the ${numberWord(n)} ${meets === 1 ? 'holds' : 'hold'} the copper that ${meets === 1 ? 'its' : 'their'} label claims.`;
  const rest = [
    count('short') &&
      `${plural(count('short'), 'falls short', 'fall short')}${untold ? ` of the copper that ${count('short') === 1 ? 'its' : 'their'} label claims` : ''}`,
    count('clad') && plural(count('clad'), 'is aluminium under a copper skin', 'are aluminium under a copper skin'),
    count('notCopper') &&
      plural(count('notCopper'), 'is not the metal that its label says', 'are not the metal that their label says'),
    count('open') && plural(count('open'), 'cannot be told yet', 'cannot be told yet'),
    count('unmeasured') && plural(count('unmeasured'), 'was not measured', 'were not measured'),
  ].filter((part): part is string => Boolean(part));
  if (rest.length === 0) return first;
  const last = rest.pop() as string;
  const list = rest.length ? `${rest.join(', ')}${rest.length > 1 ? ',' : ''} and ${last}` : last;
  return untold ? `${first}${list}.` : `${first} ${capital(list)}.`;
}
