import { DUST, EYES, HEAT, type Protocol, SHOW_THROUGH } from './protocol.ts';

/** What a caution is about, and words of the step that it stands beside. */
const BELONGS: readonly (readonly [caution: RegExp | string, step: RegExp])[] = [
  [SHOW_THROUGH, /until copper|count until|copper was first|copper shows|buzzer/i],
  [DUST, /\bstroke/i],
  [EYES, /\bbend\b/i],
  [HEAT, /hang the pieces|\bhours\b/i],
  [/fumes|burns below/i, /settle at one temperature/i],
  [/^Outdoors, in small amounts/, /in the fluid/i],
  [/do not go back to the kitchen/i, /weigh/i],
  [/fingers/i, /lower|press|strokes?\b/i],
];

/**
 * The cautions of a test beside the steps that they concern, in the order of the steps; what concerns no single step stands beside
 * the first. Every caution stands exactly once.
 */
export function cautionsByStep({ steps, cautions }: Pick<Protocol, 'steps' | 'cautions'>): {
  step: string;
  cautions: string[];
}[] {
  const beside = steps.map((step) => ({ step, cautions: [] as string[] }));
  for (const caution of cautions) {
    const [, words] =
      BELONGS.find(([about]) => (typeof about === 'string' ? about === caution : about.test(caution))) ?? [];
    const place =
      words === undefined
        ? 0
        : Math.max(
            0,
            steps.findIndex((step) => words.test(step)),
          );
    beside[place]?.cautions.push(caution);
  }
  return beside;
}
