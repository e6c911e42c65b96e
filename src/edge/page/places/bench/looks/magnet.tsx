import { knownSights } from '../../../../../methods/metal/eye.ts';
import { Trouble } from '../../../parts/trouble.tsx';
import { useKeep } from './useKeep.ts';

const SEEN = knownSights().filter(({ look }) => look === 'magnet');

/** A magnet held to the bare strands: two keys, each of which keeps its answer at once. */
export function Magnet() {
  const [keep, trouble] = useKeep();
  return (
    <div>
      <p class="note">
        Hang the magnet on a thread beside the bare strands, or a strand beside the magnet. Steel under copper pulls;
        copper, tin and aluminium do not. Strong magnets pinch, and stay away from pacemakers.
      </p>
      <div class="look-keys two">
        {SEEN.map(({ seen }) => (
          <button key={seen} type="button" class="button" onClick={() => keep([{ seen, where: '', count: '' }])}>
            {seen}
          </button>
        ))}
      </div>
      <Trouble>{trouble}</Trouble>
    </div>
  );
}
