import { useEffect, useMemo, useState } from 'preact/hooks';
import type { Entry } from '../../../../journal/entry.ts';
import { idTime } from '../../../../journal/idTime.ts';
import { lookBackTo, lookBackToEntry } from '../../../../trial/lookBack.ts';
import type { Trial } from '../../../../trial/trial.ts';
import { lookedBack, lookInside, stopLooking } from '../../store/lookBack.ts';
import { goTo } from '../../store/route.ts';
import { whenWords } from '../../store/whenWords.ts';
import { Found } from '../inside/inside.tsx';
import { whatWasSaid } from './whatWasSaid.ts';

interface LookBackProps {
  trial: Trial;
  entries: readonly Entry[];
  at: string | null;
}

/** Goes back along the journal, and shows what was inside each cable by what was known then. */
export function LookBack({ trial, entries, at }: LookBackProps) {
  const place = at === null ? entries.length - 1 : Math.max(0, lookBackToEntry(entries, at).length - 1);
  const [sliding, setSliding] = useState<number | null>(null);
  const shown = sliding ?? place;
  const entry = entries[shown]!;
  const go = (to: number) =>
    goTo({ place: 'history', trial: trial.trial, at: to >= entries.length - 1 ? null : entries[to]!.id });
  return (
    <section class="look-back">
      <h2>Look back to a moment</h2>
      <p>
        <label for="look-back">After so many entries</label>
        <input
          id="look-back"
          type="range"
          min={0}
          max={entries.length - 1}
          value={shown}
          aria-valuetext={`${shown + 1} of ${entries.length}, ${momentOf(entry)}`}
          onInput={(event) => setSliding(Number(event.currentTarget.value))}
          onChange={(event) => {
            setSliding(null);
            go(Number(event.currentTarget.value));
          }}
        />
      </p>
      <p class="small-field">
        <label for="look-back-moment">Or up to</label>
        <input
          id="look-back-moment"
          type="datetime-local"
          class="wide"
          value={localMoment(idTime(entry.id))}
          onChange={(event) => {
            const moment = new Date(event.currentTarget.value).getTime();
            if (Number.isNaN(moment)) return;
            // The field shows minutes: the whole minute belongs to it.
            go(Math.max(0, lookBackTo(entries, moment + 59_999).length - 1));
          }}
        />
      </p>
      {shown < entries.length - 1 && (
        <Banner trial={trial} entries={entries} shown={shown} onNow={() => go(entries.length - 1)} />
      )}
      {at !== null && <InsideThen entries={entries} at={at} blind={trial.blinding.blind} />}
    </section>
  );
}

function Banner({
  trial,
  entries,
  shown,
  onNow,
}: {
  trial: Trial;
  entries: readonly Entry[];
  shown: number;
  onNow: () => void;
}) {
  const entry = entries[shown]!;
  const { what, detail } = whatWasSaid(entry, trial);
  const later = entries.length - 1 - shown;
  return (
    <div class="banner" role="status">
      <p>
        <b>
          As it stood on {momentOf(entry)}, after {shown + 1} of {entries.length} entries.
        </b>{' '}
        The last one then: {what.toLowerCase()} <bdi dir="auto">{detail}</bdi>.{' '}
        {later === 1 ? 'One entry came' : `${later} entries came`} later. Nothing can be changed here.
      </p>
      <button type="button" class="button" onClick={onNow}>
        Back to now
      </button>
    </div>
  );
}

function InsideThen({ entries, at, blind }: { entries: readonly Entry[]; at: string; blind: boolean }) {
  const then = useMemo(() => lookBackToEntry(entries, at), [entries, at]);
  useEffect(() => {
    if (!blind) void lookInside(then);
    return stopLooking;
  }, [then, blind]);
  const now = lookedBack.value;
  if (blind) return <p class="note">Findings name cables, so they are shown once the names are revealed.</p>;
  if (now === null || (now.findings === null && now.stage !== 'failed'))
    return <p role="status">Computing what was known then.</p>;
  if (now.findings === null) return <p class="trouble-sentence">Nothing could be said yet: {now.sentence}</p>;
  return <Found now={now} findings={now.findings} past />;
}

const momentOf = (entry: Entry) => whenWords(new Date(idTime(entry.id)).toISOString());

/** A moment as a `datetime-local` field wants it. */
function localMoment(milliseconds: number): string {
  return whenWords(new Date(milliseconds).toISOString()).replace(' ', 'T');
}
