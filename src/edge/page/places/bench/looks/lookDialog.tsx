import '../../../styles/looks.css';
import type { Look } from '../../../../../findings/bench/wantedLooks.ts';
import type { Trial } from '../../../../../trial/trial.ts';
import { Dialog } from '../../../parts/dialog.tsx';
import { looking } from '../../../store/bench/looks.ts';
import { signOfCable } from '../../../store/bench/names.ts';
import { backToField, closed } from '../dialogs.tsx';
import { LooksOnRecord } from './looksOnRecord.tsx';
import { Magnet } from './magnet.tsx';
import { Print } from './print.tsx';
import { Strands } from './strands.tsx';

const TITLES: Readonly<Record<Look, string>> = {
  scraped_strand: 'Scrape three strands and look',
  magnet: 'Hold a magnet to the strands',
  print_on_jacket: 'Read the print on the jacket',
};

const FORMS = { scraped_strand: Strands, magnet: Magnet, print_on_jacket: Print } as const;

/** One cable looked at: what to do, large keys for what was seen, and what is on record of it already. */
export function LookDialog({ trial }: { trial: Trial }) {
  const now = looking.value;
  if (now === null) return null;
  const Form = FORMS[now.look];
  const sign = signOfCable(trial, now.cable);
  return (
    <Dialog title={`${sign}: ${TITLES[now.look]}`} onClose={closed}>
      <div class="look">
        <Form key={`${now.cable} ${now.look}`} />
        <LooksOnRecord trial={trial} cable={now.cable} sign={sign} />
        <button type="button" class="button" onClick={backToField}>
          Back to the bench
        </button>
      </div>
    </Dialog>
  );
}
