import type { FlexCable } from '../../../../findings/shapes/flex.ts';
import { pushView } from '../../../../report/bend/bendViews.ts';
import { pushLoop, pushReach } from '../../../../report/bend/pushLoop.ts';
import { variablesTheme } from '../../../../report/theme.ts';
import { noBreak } from '../../../../report/words/noBreak.ts';
import type { Reading } from '../../../../trial/trial.ts';
import { capital } from '../../../../units/capital.ts';
import { Figure } from '../../parts/figure.tsx';
import { Mind } from '../../parts/mind.tsx';
import { Picture } from '../../parts/picture.tsx';
import { useWidth } from '../../parts/useWidth.ts';
import { takenAt } from './takenAt.ts';

const FIRST_WIDTH = 380;
const WIDEST = 420;
const HEIGHT = 230;

/** Every push of a cable as force against deflection, first push and worked in apart. */
export function PushSection({ bent, readings }: { bent: FlexCable | null; readings: readonly Reading[] }) {
  const [place, width] = useWidth<HTMLDivElement>(FIRST_WIDTH);
  const pushes = bent?.pushes ?? [];
  const views = pushes.map((push) => pushView(push, readings));
  const reach = pushReach(views);
  const caution = bent?.cautions.find((text) => text.includes('scale'));
  return (
    <section>
      <h3>Push</h3>
      <div ref={place} class="drawn">
        {pushes.length === 0 && (
          <p class="note">
            No push is on record. Lay the piece over two supports on a kitchen scale and press its middle down step by
            step.
          </p>
        )}
        {pushes.map((push, i) => (
          <div key={`${push.specimen} ${push.run}`} class="drawn-one">
            <h4>
              {push.state === '' ? <bdi dir="auto">{push.run || 'A push'}</bdi> : capital(push.state)}
              {push.span_mm > 0 && <span class="unit"> over {Math.round(push.span_mm)} mm</span>}
            </h4>
            <Picture
              class="stretch"
              svg={pushLoop(views[i]!, {
                width: Math.min(width, WIDEST),
                height: HEIGHT,
                theme: variablesTheme,
                reach,
              })}
            />
            <p>
              {push.bending_stiffness !== null && (
                <>
                  <Figure of={{ ...push.bending_stiffness, unit: 'N·m²' }} />
                  {', '}
                  {takenAt(push.temperature_C, push.temperature_range_C)}.{' '}
                </>
              )}
              {noBreak(push.text)}
            </p>
            {push.lost_share !== null && (
              <p class="note">
                {noBreak(
                  `${(100 * push.lost_share).toFixed(0)} % of the work is not given back${push.lost_mJ === null ? '' : `, ${push.lost_mJ.toFixed(1)} mJ`}: the shaded loop.`,
                )}
              </p>
            )}
          </div>
        ))}
      </div>
      {bent?.push_over_droop && bent.push_over_droop.text !== '' && <p>{noBreak(bent.push_over_droop.text)}</p>}
      {caution !== undefined && <Mind look="note">{caution}</Mind>}
    </section>
  );
}
