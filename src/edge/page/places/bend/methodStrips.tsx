import type { BendMethod } from '../../../../report/bend/bendMethods.ts';
import { methodStrip } from '../../../../report/bend/methodStrip.ts';
import { orderBesideOrder } from '../../../../report/bend/orderBesideOrder.ts';
import { variablesTheme } from '../../../../report/theme.ts';
import { noBreak } from '../../../../report/words/noBreak.ts';
import { Picture } from '../../parts/picture.tsx';
import { useWidth } from '../../parts/useWidth.ts';
import { PAPER_WIDTH, printing } from '../../store/media.ts';

/** From this width two strips stand side by side, joined by lines. px */
const SIDE_BY_SIDE = 900;
/** Room between strips that stand side by side without being joined. px */
const GAP = 48;
const FIRST_WIDTH = 1360;
/** With one cable these say nothing that its sheet does not. */
const NEEDS_TWO: ReadonlySet<BendMethod['id']> = new Set(['coil', 'spring']);

/** One strip for each method; the measured and the judged order joined where there is room. */
export function MethodStrips({ methods }: { methods: readonly BendMethod[] }) {
  const [place, measuredWidth] = useWidth<HTMLDivElement>(FIRST_WIDTH);
  const width = printing.value ? PAPER_WIDTH : measuredWidth;
  const wide = width >= SIDE_BY_SIDE;
  const judged = methods.find((m) => m.id === 'judged');
  const measured = methods.find((m) => m.id === 'droop') ?? methods.find((m) => m.id === 'push');
  const pair = wide && judged && measured ? [measured, judged] : [];
  const rest = methods.filter((m) => !pair.includes(m) && (m.rows.length > 1 || !NEEDS_TWO.has(m.id)));
  const single = wide && rest.length > 1 ? (width - GAP) / 2 : Math.min(width, 760);
  return (
    <div class="bend-strips" ref={place}>
      <h2 class="hidden">By each method</h2>
      {pair.length === 2 && (
        <section class="bend-pair">
          <div class="bend-heads">
            {pair.map((method) => (
              <StripHead key={method!.id} method={method!} />
            ))}
          </div>
          <Picture svg={orderBesideOrder(measured!, judged!, { width, theme: variablesTheme }).svg} />
        </section>
      )}
      <div class={wide && rest.length > 1 ? 'bend-more two' : 'bend-more'}>
        {rest.map((method) => (
          <section key={method.id}>
            <StripHead method={method} />
            <Picture svg={methodStrip(method, { width: single, theme: variablesTheme }).svg} />
          </section>
        ))}
      </div>
    </div>
  );
}

function StripHead({ method }: { method: BendMethod }) {
  return (
    <div class="strip-head">
      <h3>
        {method.head} <span class="unit">{method.unit}</span>
      </h3>
      <p class="note">{noBreak(method.note)}</p>
    </div>
  );
}
