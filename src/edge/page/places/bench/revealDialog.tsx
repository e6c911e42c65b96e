import { reveal } from '../../store/bench/putRight.ts';
import { DialogForm } from './dialogForm.tsx';

/** Shows the names again, after asking. */
export function RevealDialog() {
  const show = async () => {
    await reveal();
    return null;
  };
  return (
    <DialogForm title="Reveal the names" act="Reveal" onAct={show}>
      <p>
        From now on every device shows which code is which cable. That it was done, when and by whom goes into the
        journal, and readings taken afterwards count as taken openly.
      </p>
    </DialogForm>
  );
}
