import { useState } from 'preact/hooks';
import { lengthsOf } from '../../../../../findings/bench/pieceLength.ts';
import type { Findings } from '../../../../../findings/schema.ts';
import { SHORTEST_TO_HEAT } from '../../../../../methods/current/cautions.ts';
import { noBreak } from '../../../../../report/words/noBreak.ts';
import type { Trial } from '../../../../../trial/trial.ts';
import { wholeText } from '../../../../../units/wholeText.ts';
import { Trouble } from '../../../parts/trouble.tsx';
import type { AmpsOpened } from '../../../store/amps/ampsAddress.ts';
import {
  asksAmbient,
  asksCurrent,
  bring,
  bringText,
  brought,
  keepBrought,
  keptPiece,
  lacking,
  logKept,
  logTrouble,
  piece,
  preview,
  putDown,
  readBrought,
  reading,
  result,
  statedAmbient,
  statedCurrent,
  stopReading,
} from '../../../store/amps/bringLog.ts';
import { ampsRoute } from '../../../store/amps/openInAmps.ts';
import { folded } from '../../../store/journal/journal.ts';
import { addressOf } from '../../../store/routeOf.ts';
import { sentenceOf } from '../../../store/sentenceOf.ts';
import { ColumnMap } from './columnMap.tsx';
import { PieceChoice } from './pieceChoice.tsx';

/** A logger's file on its way to becoming a heating test: which column is what, which piece, what it says, keep it. */
export function LogPlace({ trial, findings }: { trial: string; findings: Findings }) {
  const now = preview.value;
  return (
    <article class="log-place">
      <header class="amps-lead">
        <h1>{now === null ? 'Bring the logger’s file.' : 'Which column is which?'}</h1>
        <p class="buttons">
          <a class="button" href={addressOf(ampsRoute(trial, { what: 'nothing' }))}>
            Back to Amps
          </a>
        </p>
      </header>
      {logKept.value !== '' && (
        <p class="said" role="status">
          {logKept.value}{' '}
          <a class="log-kept" href={addressOf(ampsRoute(trial, keptWhere()))}>
            See what it says
          </a>
        </p>
      )}
      <Trouble>{noBreak(logTrouble.value)}</Trouble>
      {now === null ? (
        <Bring />
      ) : (
        <>
          <p class="note">
            <bdi dir="auto">{brought.value?.name}</bdi>. {brought.value?.note}
          </p>
          <ColumnMap preview={now} />
          <Stated />
          <ReadIt findings={findings} />
        </>
      )}
    </article>
  );
}

/** The sheet of the cable whose piece was kept last. */
function keptWhere(): AmpsOpened {
  const cable = folded.value?.specimens.find(({ specimen }) => specimen === keptPiece.value)?.cable;
  return cable === undefined ? { what: 'nothing' } : { what: 'cable', cable };
}

function Bring() {
  const [over, setOver] = useState(false);
  const [text, setText] = useState('');
  const take = (files: FileList | null | undefined) => {
    const file = files?.[0];
    if (file !== undefined) void bring(file);
  };
  return (
    <section
      class={over ? 'log-drop over' : 'log-drop'}
      aria-label="The file"
      onDragOver={(event) => {
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={(event) => {
        event.preventDefault();
        setOver(false);
        take(event.dataTransfer?.files);
      }}
    >
      <p>
        A CSV of any logger, a million rows at most: a time, a temperature of the cable, and where the logger has them
        the current, the surroundings, and the volts between the contacts. Drop it here, choose it, or paste its text.
      </p>
      <p>
        <label class="button" for="log-file">
          Choose a file
        </label>
        <input
          id="log-file"
          class="hidden"
          type="file"
          accept=".csv,.txt,.tsv,text/*"
          onChange={(event) => {
            take(event.currentTarget.files);
            event.currentTarget.value = '';
          }}
        />
      </p>
      <div class="edit">
        <label for="log-text">Or its text</label>
        <textarea
          id="log-text"
          rows={6}
          spellcheck={false}
          value={text}
          onInput={(event) => setText(event.currentTarget.value)}
        />
      </div>
      <p>
        <button type="button" class="button" disabled={text.trim() === ''} onClick={() => void bringText(text)}>
          Take the text
        </button>
      </p>
    </section>
  );
}

function Stated() {
  const trial = folded.value;
  if (trial === null) return null;
  return (
    <div class="log-stated">
      <PieceChoice trial={trial} value={piece.value} onChoose={(chosen) => (piece.value = chosen)} id="log-piece" />
      <ShortPiece trial={trial} />
      {asksCurrent.value && (
        <div class="edit">
          <label for="log-current">Current all the while, A</label>
          <input
            id="log-current"
            inputMode="decimal"
            autocomplete="off"
            value={statedCurrent.value}
            onInput={(event) => (statedCurrent.value = event.currentTarget.value)}
          />
        </div>
      )}
      {asksAmbient.value && (
        <div class="edit">
          <label for="log-ambient">Surroundings all the while, °C</label>
          <input
            id="log-ambient"
            inputMode="decimal"
            autocomplete="off"
            placeholder="I do not know"
            value={statedAmbient.value}
            onInput={(event) => (statedAmbient.value = event.currentTarget.value)}
          />
        </div>
      )}
    </div>
  );
}

/** Its ends reach into a short piece. */
function ShortPiece({ trial }: { trial: Trial }) {
  const length = piece.value === '' ? null : (lengthsOf(trial, piece.value)[0] ?? null);
  if (length !== null && length >= SHORTEST_TO_HEAT) return null;
  return (
    <p class={length === null ? 'note' : 'caution'}>
      {length !== null && <b>Mind: </b>}
      {noBreak(
        length === null
          ? `A piece under ${SHORTEST_TO_HEAT} m heats or cools from its ends: heat a longer one, with the thermometer in its middle.`
          : `This piece is ${(1000 * length).toFixed(0)} mm long: under ${SHORTEST_TO_HEAT} m it heats or cools from its ends, and the log says little of the cable.`,
      )}
    </p>
  );
}

function ReadIt({ findings }: { findings: Findings }) {
  const [keeping, setKeeping] = useState(false);
  const cable = folded.value?.specimens.find((each) => each.specimen === piece.value)?.cable;
  const metal = findings.cables.find((each) => each.cable === cable)?.metal_found ?? null;
  const found = result.value;
  const keep = async () => {
    setKeeping(true);
    try {
      await keepBrought();
      document.querySelector<HTMLElement>('.log-kept')?.focus();
    } catch (error) {
      logTrouble.value = sentenceOf(error);
    }
    setKeeping(false);
  };
  return (
    <div class="log-read">
      {lacking.value.length > 0 && (
        <p class="note" role="status">
          Before it can be read: {lacking.value.join('; ')}.
        </p>
      )}
      {found !== null && <Says />}
      {reading.value !== null && (
        <p class="working" role="status">
          <progress max={1} value={reading.value} aria-label="Read so far" />
          Reading, {Math.round(100 * reading.value)} %.
          <button type="button" class="link" onClick={stopReading}>
            Stop
          </button>
        </p>
      )}
      <p class="buttons">
        {found === null ? (
          <button
            type="button"
            class="button main"
            disabled={lacking.value.length > 0 || reading.value !== null}
            onClick={() => void readBrought(metal)}
          >
            Read it
          </button>
        ) : (
          <button type="button" class="button main" disabled={keeping} onClick={() => void keep()}>
            {keeping ? 'Keeping …' : `Keep ${found.rows.length} rows`}
          </button>
        )}
        <button type="button" class="button" onClick={putDown}>
          Put it down
        </button>
      </p>
    </div>
  );
}

const REFUSED: Readonly<Record<string, string>> = {
  'too short': 'the log is too short to say where it ends',
  'too wide': 'it scatters too much to say where it ends',
  'no rise': 'the cable did not warm by a kelvin',
  'too few readings': 'there are too few readings',
  'not from rest': 'the cable was warm already',
};

/** What the log says by itself, before it is kept. */
function Says() {
  const { readings, rows, unreadable, gaps, seconds, heatings } = result.value!;
  return (
    <section class="log-says" aria-labelledby="log-says">
      <h2 id="log-says">What it says</h2>
      <p>
        {noBreak(
          `${wholeText(readings)} readings over ${(seconds / 60).toFixed(0)} min, kept as ${rows.length} means; no mean runs across a switching of the current.`,
        )}
      </p>
      {unreadable.rows > 0 && (
        <p>
          {unreadable.rows === 1 ? 'One row was' : `${wholeText(unreadable.rows)} rows were`} left out because the time
          could not be read, the first at row {unreadable.first}.
        </p>
      )}
      {gaps > 0 && <p>{gaps === 1 ? 'It has one gap.' : `It has ${gaps} gaps.`}</p>}
      <ul>
        {heatings.map(({ current, steadyRise, refused }) => (
          <li key={current}>
            {noBreak(
              steadyRise === null
                ? `${current.toFixed(0)} A: ${REFUSED[refused ?? ''] ?? refused}.`
                : `${current.toFixed(0)} A: ends about ${steadyRise.toFixed(1)} K above the surroundings.`,
            )}
          </li>
        ))}
      </ul>
      {heatings.length === 0 && <p>It holds no stretch of a dozen readings under one steady current.</p>}
    </section>
  );
}
