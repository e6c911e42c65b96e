import type { ComponentChildren } from 'preact';
import type { Flex, FlexCable } from '../../../../findings/shapes/flex.ts';
import type { Measured } from '../../../../findings/shapes/measured.ts';
import type { BendMethod } from '../../../../report/bend/bendMethods.ts';
import { figureText } from '../../../../report/figures.ts';
import { chanceText } from '../../../../report/words/chanceWords.ts';
import { FigureOf } from '../../parts/figure.tsx';
import type { CableColumn } from '../../parts/openingCables.tsx';
import { units } from '../../store/units.ts';
import { AS_ONE, degrees } from './takenAt.ts';

/** A cable with what was found of its bending; judged ones may have no figures and the other way round. */
export interface BentCable {
  cable: string;
  name: string;
  bent: FlexCable | null;
}

export type BendColumn = CableColumn<BentCable>;

const figure = (of: Measured | null | undefined): ComponentChildren | null =>
  of == null ? null : <FigureOf text={figureText({ ...of, unit: '1' })} unit={false} />;

/** The columns that have something in them for at least one cable; coils and what springs back stand in strips and sheets. */
export function bendColumns(flex: Flex, methods: readonly BendMethod[]): BendColumn[] {
  const some = (of: (cable: FlexCable) => unknown) => flex.cables.some((cable) => of(cable) !== null);
  const pushed = methods.find((m) => m.id === 'push');
  const columns: (BendColumn | null)[] = [
    some((c) => c.bending_stiffness) ? number('stiffness', 'Stiffness', 'N·m²', ({ bent }) => stiffness(bent)) : null,
    some((c) => c.bending_stiffness)
      ? number('at', 'at', `°${units.value.temperature}`, ({ bent }) => temperature(bent))
      : null,
    pushed && some((c) => (c.method === 'droop' ? true : null))
      ? number('push', 'by push', 'N·m²', ({ cable }) => {
          const row = pushed.rows.find((r) => r.cable === cable);
          return row ? <InParts text={row.text} /> : null;
        })
      : null,
    some((c) => c.bending_length)
      ? number('length', 'Bending length', 'mm', ({ bent }) => figure(bent?.bending_length))
      : null,
    some((c) => c.cold_stiffening)
      ? number('cold', 'In the cold', '× as stiff', ({ bent }) => figure(bent?.cold_stiffening?.ratio))
      : null,
    some((c) => c.bounds?.text || null)
      ? {
          id: 'between',
          head: 'Between sliding and stuck strands',
          unit: '',
          words: true,
          cell: ({ bent }) => bent?.bounds?.text.replace(/^Its stiffness is /, '').replace(/\.$/, '') ?? null,
        }
      : null,
    flex.judged && flex.judged.groups.length <= 1
      ? number('easiest', 'By hand, chance', 'of being easiest', ({ cable }) => {
          const judged = flex.judged?.cables.find((c) => c.cable === cable);
          return judged == null || judged.probability_best === null ? null : chanceText(judged.probability_best);
        })
      : null,
  ];
  return columns.filter((column) => column !== null);
}

const number = (id: string, head: string, unit: string, cell: BendColumn['cell']): BendColumn => ({
  id,
  head,
  unit,
  cell,
});

/** A stiffness says how it was found where it was not by droop. */
function stiffness(bent: FlexCable | null): ComponentChildren {
  if (bent?.method !== 'push') return figure(bent?.bending_stiffness);
  return (
    <>
      {figure(bent.bending_stiffness)}
      <span class="note"> by push{bent.push_state === '' ? '' : `, ${bent.push_state}`}</span>
    </>
  );
}

function temperature(bent: FlexCable | null): ComponentChildren {
  if (bent?.temperature_C == null) return <span class="unknown">not noted</span>;
  const [low, high] = bent.temperature_range_C ?? [bent.temperature_C, bent.temperature_C];
  return high - low < AS_ONE ? degrees(bent.temperature_C) : `${degrees(low)} to ${degrees(high)}`;
}

/** `0.0602 ± 0.0012` with the value standing out. */
function InParts({ text }: { text: string }) {
  const [value = '', plusMinus = ''] = text.split(' ± ');
  return <FigureOf text={{ value, plusMinus, unit: '', condition: '' }} unit={false} />;
}
