import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { Dialog } from '../../parts/dialog.tsx';
import { backToField, closed } from './dialogs.tsx';

interface DialogFormProps {
  title: string;
  /** The words on the button that does it. */
  act: string;
  /** Does it; a sentence when something is missing, and throws when it could not be kept. */
  onAct: () => Promise<string | null>;
  children: ComponentChildren;
}

/** A dialog with one thing to do: does it and closes, or says what stands in the way. */
export function DialogForm({ title, act, onAct, children }: DialogFormProps) {
  const [trouble, setTrouble] = useState('');
  const submit = async (event: Event) => {
    event.preventDefault();
    const said = await onAct().catch((error: unknown) => (error instanceof Error ? error.message : String(error)));
    if (said === null) backToField();
    else setTrouble(said);
  };
  return (
    <Dialog title={title} onClose={closed}>
      <form onSubmit={(event) => void submit(event)}>
        {children}
        {trouble !== '' && (
          <p class="trouble-sentence" role="alert">
            {trouble}
          </p>
        )}
        <div class="buttons">
          <button type="submit" class="button main">
            {act}
          </button>
          <button type="button" class="button" onClick={backToField}>
            Leave it
          </button>
        </div>
      </form>
    </Dialog>
  );
}
