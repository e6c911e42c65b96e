import { narrow } from '../store/media.ts';
import { KeptWhere } from './keptWhere.tsx';
import { Mark } from './mark.tsx';
import { UnitSwitches } from './unitSwitches.tsx';

/** Mark and wordmark, the trial's title, and the units that figures are shown in. */
export function Header({ trial, units }: { trial: { title: string; place: string } | undefined; units: boolean }) {
  return (
    <header class="header">
      <a class="wordmark" href="/">
        <Mark />
        Cupel
      </a>
      {trial === undefined ? (
        <span class="gap" />
      ) : (
        <p class="trial">
          <b>
            <bdi dir="auto">{trial.title}</bdi>
          </b>
          {trial.place !== '' && (
            <span>
              <bdi dir="auto">{trial.place}</bdi>
            </span>
          )}
        </p>
      )}
      {trial !== undefined && <KeptWhere />}
      {units && !narrow.value && <UnitSwitches />}
      {units && narrow.value && (
        <details class="units-fold">
          <summary>Units</summary>
          <UnitSwitches />
        </details>
      )}
    </header>
  );
}
