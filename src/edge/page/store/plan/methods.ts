/** Which methods are wanted, and how much work: what the page ticks, as settings of the plan. */
import {
  BEND_WISHES,
  FOUR_WIRE_WISH,
  methodsIn,
  PLAN_METHODS,
  type PlanMethod,
  type PlanSettings,
  planSettings,
} from '../../../../findings/plan/settings.ts';
import type { SmallestPlan, TriedPlan } from '../../../../findings/plan/smallestPlan.ts';
import type { Row } from './correct.ts';
import { saySetting } from './settings.ts';

/** What somebody wants beside the methods: ohms by volts and amps and acts of bending that the bench then asks for, and current, for which nothing is planned. */
export const WISHES = ['amps', FOUR_WIRE_WISH, ...BEND_WISHES] as const;
export type Wish = (typeof WISHES)[number];

export function wishesIn(text: string): Wish[] {
  const words = text.toLowerCase().split(/[\s,;+]+/);
  return WISHES.filter((wish) => words.includes(wish));
}

/** The `methods` setting in words. */
export function methodsText(methods: Iterable<PlanMethod>, wishes: readonly Wish[]): string {
  const wanted = new Set(methods);
  return [...PLAN_METHODS.filter((method) => wanted.has(method)), ...wishes].join(', ');
}

/** Ticks a method or takes its tick away. The last method cannot be taken away: a trial without any plans nothing. */
export async function tick(method: PlanMethod, on: boolean): Promise<void> {
  await saySetting('methods', (now) => {
    const next = new Set(planSettings({ methods: now }).methods);
    if (on) next.add(method);
    else next.delete(method);
    return next.size === 0 ? now : methodsText(next, wishesIn(now));
  });
}

export async function tickWish(wish: Wish, on: boolean): Promise<void> {
  await saySetting('methods', (now) => {
    const others = wishesIn(now).filter((each) => each !== wish);
    return methodsText(planSettings({ methods: now }).methods, on ? [...others, wish] : others);
  });
}

/** What a way of working asks for, as settings; blank stands for the default. */
export type Ways = Readonly<Record<'methods' | 'repeats' | 'specimens_each' | 'apart_mm', string>>;

export function everything(wishes: readonly Wish[]): Ways {
  return { methods: methodsText(PLAN_METHODS, wishes), repeats: '', specimens_each: '', apart_mm: '' };
}

/**
 * The least work that settles every label: of each label the plan that was found, or the best where none shows enough, and
 * of these the most of everything. null when nothing was tried.
 */
export function leastWork(searches: readonly (SmallestPlan | null)[], wishes: readonly Wish[]): Ways | null {
  const plans = searches.flatMap((search) => (search === null ? [] : (search.plan ?? best(search.tried) ?? [])));
  if (plans.length === 0) return null;
  const { weigh, ohms, strands, eye } = {
    weigh: plans.some(({ work }) => work.mass !== null),
    ohms: plans.some(({ work }) => work.ohms !== null),
    strands: plans.some(({ work }) => work.strands !== null),
    eye: plans.some(({ work }) => work.eye),
  };
  const wanted = { ohms, bend: false, weigh, strands, eye, wall: false, abuse: false };
  const most = (of: (plan: TriedPlan) => number) => Math.max(...plans.map(of));
  const apart = most(({ readings }) => readings.apartLength ?? 0);
  return {
    methods: methodsText(
      PLAN_METHODS.filter((method) => wanted[method]),
      wishes,
    ),
    repeats: String(most(({ readings }) => readings.repeats)),
    specimens_each: String(most(({ readings }) => readings.pieces)),
    apart_mm: apart > 0 ? String(Math.round(apart * 1000)) : '',
  };
}

const best = (tried: readonly TriedPlan[]): TriedPlan | null =>
  tried.reduce<TriedPlan | null>((a, b) => (a === null || b.shows > a.shows ? b : a), null);

/** Whether the plan works that way already. */
export function worksSo(settings: Row, plan: PlanSettings, ways: Ways): boolean {
  const usual = (name: 'repeats' | 'specimens_each') => (name === 'repeats' ? plan.repeats : plan.specimensEach);
  const asked = new Set(methodsIn(ways.methods));
  const sameMethods = asked.size === plan.methods.size && [...asked].every((method) => plan.methods.has(method));
  const same = (name: 'repeats' | 'specimens_each') =>
    ways[name] === '' ? (settings[name] ?? '') === '' : Number(ways[name]) === usual(name);
  return sameMethods && same('repeats') && same('specimens_each') && (settings.apart_mm ?? '') === ways.apart_mm;
}

/** Says the settings of a way of working; those that stand so already are not said again. */
export async function workSo(ways: Ways): Promise<void> {
  for (const [name, value] of Object.entries(ways)) await saySetting(name, value);
}
