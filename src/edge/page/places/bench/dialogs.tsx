import { Dialog } from '../../parts/dialog.tsx';
import { closeDialog, openDialog } from '../../store/bench/dialogs.ts';
import { inHand } from '../../store/bench/inHand.ts';
import { folded } from '../../store/journal/journal.ts';
import { BlindDialog } from './blindDialog.tsx';
import { ChooseDialog } from './chooseDialog.tsx';
import { FIELD, LETTERS } from './keys.ts';
import { LookDialog } from './looks/lookDialog.tsx';
import { MixUpDialog } from './mixUpDialog.tsx';
import { NoteDialog } from './noteDialog.tsx';
import { RevealDialog } from './revealDialog.tsx';
import { StrikeDialog } from './strikeDialog.tsx';

/** Closes what stands open; the field is given back once it has gone. */
export function backToField(): void {
  document.querySelector<HTMLDialogElement>('dialog[open]')?.close();
}

/** What was open has closed. With the next picture, because until then what lay behind it takes no typing. */
export function closed(): void {
  closeDialog();
  requestAnimationFrame(() => {
    const field = document.getElementById(FIELD);
    field?.blur();
    field?.focus();
  });
}

/** The dialog that stands open before the bench, if any. */
export function BenchDialogs() {
  const [open, trial, act] = [openDialog.value, folded.value, inHand.value];
  if (open === null || trial === null) return null;
  if (open === 'keys') return <Keys />;
  if (open === 'reveal') return <RevealDialog />;
  if (open === 'blind') return <BlindDialog trial={trial} />;
  if (open === 'look') return <LookDialog trial={trial} />;
  if (open === 'mix-up') return <MixUpDialog trial={trial} />;
  if (act === null) return null;
  if (open === 'choose') return <ChooseDialog trial={trial} act={act} />;
  if (open === 'strike') return <StrikeDialog trial={trial} act={act} />;
  return <NoteDialog trial={trial} act={act} photo={open === 'photo'} />;
}

function Keys() {
  return (
    <Dialog title="Keys at the bench" onClose={closed}>
      <p>
        Digits and Enter are taken wherever you are on the page, so a tool that types needs nothing. Letters work while
        the field is empty.
      </p>
      <dl class="keys">
        <dt>Enter, or a foot pedal</dt>
        <dd>record and go on</dd>
        <dt>Arrows</dt>
        <dd>next reading, or the one before</dd>
        <dt>Escape</dt>
        <dd>clear the field, or keep the reading in question</dd>
        {Object.entries(LETTERS).map(([key, { words }]) => (
          <div key={key}>
            <dt>{key.toUpperCase()}</dt>
            <dd>{words}</dd>
          </div>
        ))}
      </dl>
      <form method="dialog">
        <button type="submit" class="button">
          Back to the bench
        </button>
      </form>
    </Dialog>
  );
}
