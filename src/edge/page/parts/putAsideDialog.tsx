import { useEffect, useState } from 'preact/hooks';
import { FormDialog } from './formDialog.tsx';
import { Reason } from './reason.tsx';

interface PutAsideDialogProps {
  /** What is put aside or taken up again, as a person calls it. */
  name: string;
  again: boolean;
  /** What putting it aside is called: a trial is put away. */
  words?: string;
  /** What goes or comes along with it, in a sentence; empty when nothing does. */
  along?: string;
  usual?: readonly string[];
  /** Does it with the reason; throws when it could not be kept. */
  onAct: (why: string) => Promise<void>;
  onClose: () => void;
}

/** Why things are usually put aside. */
const USUAL = ['listed twice', 'entered by mistake', 'for trying out'];

/** Asks why something is put aside, or taken up again. */
export function PutAsideDialog({
  name,
  again,
  words = 'Put aside',
  along = '',
  usual = USUAL,
  onAct,
  onClose,
}: PutAsideDialogProps) {
  const [why, setWhy] = useState('');
  // Native dialogs give the focus back when they are closed, and this one may leave the page with what it was about.
  useEffect(() => {
    const back = document.activeElement;
    return () => {
      if (back instanceof HTMLElement && back.isConnected) back.focus();
    };
  }, []);
  const act = async () => {
    if (why.trim() === '') return 'Found no reason; say why, in a few words.';
    await onAct(why.trim());
    return null;
  };
  const done = again ? 'Take up again' : words;
  return (
    <FormDialog title={`${done}: ${name}`} act={done} onAct={act} onClose={onClose}>
      <p class="note">
        {again
          ? 'It counts again as before. '
          : 'It stays on record with this reason, counts no longer, and can be taken up again. '}
        {along} It needs a reason, in a few words.
      </p>
      <Reason id="aside-why" label="Why, in your words" why={why} onWhy={setWhy} usual={again ? [] : usual} />
    </FormDialog>
  );
}
