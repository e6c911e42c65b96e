import { useState } from 'preact/hooks';
import { readsOnly } from '../store/devices.ts';
import { putAside, type Thing, takeUpAgain } from '../store/putAside.ts';
import { PutAsideDialog } from './putAsideDialog.tsx';

interface PutAsideProps extends Thing {
  /** As a person calls it. */
  name: string;
  /** What goes along with it, in a sentence. */
  along?: string;
  usual?: readonly string[];
  /** True where it stands aside already. */
  again?: boolean;
}

/** Puts a thing of the open trial aside, or takes it up again: a link that asks for the reason. */
export function PutAside({ about, which, name, along, usual, again = false }: PutAsideProps) {
  const [asking, setAsking] = useState(false);
  const words = again ? 'take up again' : 'put aside';
  if (readsOnly.value) return null;
  const act = (why: string) => (again ? takeUpAgain : putAside)({ about, which }, why);
  return (
    <>
      <button
        type="button"
        class="link"
        aria-label={`${again ? 'Take up again' : 'Put aside'}: ${name}`}
        onClick={() => setAsking(true)}
      >
        {words}
      </button>
      {asking && (
        <PutAsideDialog
          name={name}
          again={again}
          along={again ? '' : along}
          usual={usual}
          onAct={act}
          onClose={() => setAsking(false)}
        />
      )}
    </>
  );
}
