import { listed } from '../flex/words.ts';
import type { Warning } from '../schema.ts';
import type { CurrentCable } from '../shapes/current.ts';

/** Everything worth a warning about one cable under current. */
export function currentWarnings(c: CurrentCable): Warning[] {
  const say = (code: string, text: string): Warning => ({ code, cable: c.cable, text });
  const list: Warning[] = [];
  for (const r of c.four_wire) {
    if (r.resistance === null) list.push(say('four-wire-gives-nothing', r.text));
    else if (r.plausible === 'too high') list.push(say('four-wire-too-high', `${r.specimen}: ${r.text}`));
    else if (r.plausible === 'too low') list.push(say('four-wire-too-low', `${r.specimen}: ${r.text}`));
    else if (r.way === 'one level') list.push(say('four-wire-one-level', `${r.specimen}: ${r.text}`));
  }
  for (const t of c.heating_tests) {
    if (t.refused) list.push(say('heating-settles-nothing', `${t.specimen} at ${t.current_A.toFixed(0)} A: ${t.text}`));
    else if (t.copper?.apart)
      list.push(say('thermometer-off-copper', `${t.specimen} at ${t.current_A.toFixed(0)} A: ${t.text}`));
  }
  return list;
}

/** What the heating tests and carrying currents say, in one or two plain sentences. */
export function currentSentence(cables: readonly CurrentCable[]): string {
  const tests = cables.flatMap((c) =>
    c.heating === null
      ? []
      : [
          `${c.name} ends ${c.heating.steady_rise.value.toFixed(0)} K above its surroundings at ${c.heating.current_A.toFixed(0)} A`,
        ],
  );
  const heated = tests.length > 0 ? `${listed(tests)}.` : '';
  const carrying = cables.filter((c) => c.role === 'compared' && c.carrying !== null);
  if (carrying.length === 0) return heated;
  const sorted = [...carrying].sort((a, b) => b.carrying!.current_A.value - a.carrying!.current_A.value);
  const [most, least] = [sorted[0], sorted[sorted.length - 1]];
  const amps = (c: CurrentCable) => `about ${c.carrying!.current_A.value.toFixed(0)} A`;
  const alike = new Set(carrying.map((c) => c.carrying!.rating_C)).size === 1;
  const until = alike
    ? `before the conductor stands at ${most.carrying!.rating_C.toFixed(0)} °C`
    : 'before the conductor stands at the rating of its jacket';
  const air = `In still air at ${most.carrying!.ambient_C.toFixed(0)} °C`;
  const carried =
    most === least
      ? `${air} ${most.name} carries ${amps(most)} ${until}.`
      : `${air} the cables carry from ${amps(least)} (${least.name}) to ${amps(most)} (${most.name}) ${until}.`;
  return [heated, carried].filter(Boolean).join(' ');
}
