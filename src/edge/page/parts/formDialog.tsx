import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { sentenceOf } from '../store/sentenceOf.ts';
import { Dialog } from './dialog.tsx';
import { Trouble } from './trouble.tsx';

interface FormDialogProps {
  title: string;
  /** The words on the button that does it. */
  act: string;
  /** Does it; a sentence when something is missing, and throws when it could not be kept. */
  onAct: () => Promise<string | null>;
  /** It has closed, whether anything was done or not. */
  onClose: () => void;
  children: ComponentChildren;
}

/** A dialog with one thing to do: does it and closes, or says what stands in the way. */
export function FormDialog({ title, act, onAct, onClose, children }: FormDialogProps) {
  const [trouble, setTrouble] = useState('');
  const submit = async (event: SubmitEvent & { currentTarget: HTMLFormElement }) => {
    event.preventDefault();
    const dialog = event.currentTarget.closest('dialog');
    const said = await onAct().catch(sentenceOf);
    if (said === null) dialog?.close();
    else setTrouble(said);
  };
  return (
    <Dialog title={title} onClose={onClose}>
      <form onSubmit={(event) => void submit(event)}>
        {children}
        <div class="dialog-foot">
          <Trouble>{trouble}</Trouble>
          <div class="buttons">
            <button type="submit" class="button main">
              {act}
            </button>
            <button type="button" class="button" onClick={(event) => event.currentTarget.closest('dialog')?.close()}>
              Leave it
            </button>
          </div>
        </div>
      </form>
    </Dialog>
  );
}
