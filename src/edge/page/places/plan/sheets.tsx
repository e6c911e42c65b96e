import { useEffect } from 'preact/hooks';
import type { Paper } from '../../../../report/labels/paper.ts';
import type { Trial } from '../../../../trial/trial.ts';
import { Frame } from '../../parts/frame.tsx';
import { Picture } from '../../parts/picture.tsx';
import { Switch } from '../../parts/switch.tsx';
import { trialPlaces } from '../../parts/trialPlaces.ts';
import { Trouble } from '../../parts/trouble.tsx';
import { entries } from '../../store/journal/journal.ts';
import { drawSheets, linkAddress, paper, sheets, withCodes, withNames } from '../../store/plan/sheets.ts';
import { goTo } from '../../store/route.ts';
import { addressOf } from '../../store/routeOf.ts';
import { units } from '../../store/units.ts';
import type { SheetKind } from '../../worker/jobs.ts';

const TITLES: Readonly<Record<SheetKind, string>> = {
  labels: 'Labels for the pieces, to be cut apart',
  flags: 'Flags for the pieces, each as long as its cable is thick',
  'cut-list': 'Cut list for the bench',
};

/** Sheets as they will come out of the printer, and nothing else on them. */
export function Sheets({ trial, what }: { trial: Trial; what: SheetKind }) {
  const blind = trial.blinding.blind;
  const said = entries.value;
  const link = linkAddress.value;
  useEffect(() => {
    void drawSheets(said, what, trial.trial, blind);
  }, [said, what, paper.value, withNames.value, withCodes.value, link, blind, units.value]);
  const now = sheets.value;
  return (
    <Frame
      title={`${TITLES[what]}: ${trial.title || trial.trial}`}
      places={trialPlaces(trial.trial, 'plan')}
      trial={{ title: trial.title || trial.trial, place: trial.place }}
      units
    >
      <div class="sheets-view">
        <h1>{TITLES[what]}</h1>
        <div class="choices">
          <Switch
            legend="What to print"
            choices={[
              ['labels', 'Labels', 'Labels'],
              ['flags', 'Flags', 'Flags'],
              ['cut-list', 'Cut list', 'Cut list'],
            ]}
            value={what}
            onChoose={(sheet) => goTo({ place: 'plan', trial: trial.trial, sheet })}
          />
          <Switch
            legend="Paper"
            choices={[
              ['A4', 'A4', 'A4'],
              ['Letter', 'Letter', 'Letter'],
            ]}
            value={paper.value}
            onChoose={(size) => {
              paper.value = size;
            }}
          />
          {what !== 'cut-list' && <LabelChoices blind={blind} />}
        </div>
        <div class="buttons">
          <button type="button" class="button main" disabled={now.svgs.length === 0} onClick={() => print()}>
            {now.busy && now.svgs.length === 0
              ? 'Drawing the sheets'
              : `Print ${now.svgs.length === 1 ? 'one sheet' : `${now.svgs.length} sheets`}`}
          </button>
          <a class="button" href={addressOf({ place: 'plan', trial: trial.trial, sheet: null })}>
            Back to the plan
          </a>
        </div>
        <p class="note">In the printer’s own dialogue: true size, 100 %, no margins added.</p>
        <Trouble>{now.sentence}</Trouble>
        <Papers svgs={now.svgs} size={now.paper} busy={now.busy} />
      </div>
    </Frame>
  );
}

function Papers({ svgs, size, busy }: { svgs: readonly string[]; size: Paper; busy: boolean }) {
  return (
    <div class="papers" aria-busy={busy}>
      {svgs.map((svg, number) => (
        <Picture key={number} class={`paper ${size}`} svg={svg} />
      ))}
    </div>
  );
}

function LabelChoices({ blind }: { blind: boolean }) {
  return (
    <>
      {!blind && (
        <Switch
          legend="What stands beside the code"
          choices={[
            ['yes', 'code, cable and piece', 'code and names of cable and piece'],
            ['no', 'code alone', 'code alone'],
          ]}
          value={withNames.value ? 'yes' : 'no'}
          onChoose={(choice) => {
            withNames.value = choice === 'yes';
          }}
        />
      )}
      <Switch
        legend="QR"
        choices={[
          ['yes', 'with QR', 'with QR'],
          ['no', 'without', 'without QR'],
        ]}
        value={withCodes.value ? 'yes' : 'no'}
        onChoose={(choice) => {
          withCodes.value = choice === 'yes';
        }}
      />
      {withCodes.value && (
        <label class="edit">
          <span>
            Address in the QR
            <span class="hint">{addressHint()}</span>
          </span>
          <input
            value={linkAddress.value}
            autocomplete="off"
            spellcheck={false}
            inputMode="url"
            onChange={(event) => {
              linkAddress.value = event.currentTarget.value.trim().replace(/\/+$/, '');
            }}
          />
        </label>
      )}
    </>
  );
}

/** A phone cannot open an address that means the bench computer itself. */
function addressHint(): string {
  let host = '';
  try {
    host = new URL(linkAddress.value).hostname;
  } catch {
    return 'expected an address, such as http://192.168.1.20:4870';
  }
  if (/^(localhost|127\.|\[::1\])/.test(host))
    return 'opens on this computer alone; for phones, type the address that “npm start -- --share” shows';
  return 'leads to the piece on Bench';
}
