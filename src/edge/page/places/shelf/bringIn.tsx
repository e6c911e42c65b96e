import { useEffect, useRef, useState } from 'preact/hooks';
import { broughtByDrop, broughtByField } from '../../store/brought.ts';
import { takeIn } from '../../store/intake.ts';
import { IntakeOutcome } from './intakeOutcome.tsx';

/** The door for readings from elsewhere: drop them anywhere on the page, or choose them. */
export function BringIn() {
  const over = useDropAnywhere();
  return (
    <section class="bring-in" aria-labelledby="bring-in">
      <h2 id="bring-in">Bring readings in</h2>
      <div class={over ? 'drop over' : 'drop'}>
        <p>
          {over
            ? 'Let go, and it will be read.'
            : 'Drop a folder, a .zip or CSV files anywhere on this page. It needs cables.csv and something measured, mostly readings.csv with specimens.csv.'}
        </p>
        <div class="buttons">
          <Choose label="Choose a .zip or CSV files" accept=".zip,.csv,.json" />
          <Choose label="Choose a folder" folder />
        </div>
      </div>
      <IntakeOutcome />
    </section>
  );
}

function Choose({ label, accept, folder = false }: { label: string; accept?: string; folder?: boolean }) {
  const field = useRef<HTMLInputElement>(null);
  return (
    <>
      <button type="button" class="button" onClick={() => field.current?.click()}>
        {label}
      </button>
      <input
        ref={field}
        type="file"
        class="hidden"
        tabIndex={-1}
        aria-label={label}
        accept={accept}
        multiple
        {...(folder ? FOLDER : {})}
        onChange={(event) => {
          const list = event.currentTarget.files;
          if (list !== null && list.length > 0) void takeIn(broughtByField(list));
        }}
        onClick={(event) => {
          // The same file chosen twice is read twice.
          event.currentTarget.value = '';
        }}
      />
    </>
  );
}

/** The attribute that lets a file field take a whole folder; the types of the page's library do not know it. */
const FOLDER = { webkitdirectory: true } as object;

/** Takes files dropped anywhere on the page; true while something is held over it. */
function useDropAnywhere(): boolean {
  const [over, setOver] = useState(false);
  useEffect(() => {
    const holdsFiles = (event: DragEvent) => event.dataTransfer?.types.includes('Files') ?? false;
    const hold = (event: DragEvent) => {
      if (!holdsFiles(event)) return;
      event.preventDefault();
      setOver(true);
    };
    const leave = (event: DragEvent) => {
      if (event.relatedTarget === null) setOver(false);
    };
    const drop = (event: DragEvent) => {
      setOver(false);
      if (!holdsFiles(event) || event.dataTransfer === null) return;
      event.preventDefault();
      void takeIn(broughtByDrop(event.dataTransfer));
    };
    addEventListener('dragover', hold);
    addEventListener('dragleave', leave);
    addEventListener('drop', drop);
    return () => {
      removeEventListener('dragover', hold);
      removeEventListener('dragleave', leave);
      removeEventListener('drop', drop);
    };
  }, []);
  return over;
}
