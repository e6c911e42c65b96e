import { shelf } from '../../store/shelf.ts';

/** The way to the cables of all trials, once there are any. */
export function AllCables() {
  const now = shelf.value;
  if (now.state !== 'ready') return null;
  const standing = now.trials.filter(({ putAway }) => putAway === undefined);
  const cables = standing.reduce((sum, trial) => sum + trial.cables, 0);
  if (cables === 0) return null;
  return (
    <section class="all-cables" aria-labelledby="all-cables">
      <h2 id="all-cables">Cables seen before</h2>
      <p>
        <a href="/cables">
          {cables === 1 ? 'One cable' : `All ${cables.toLocaleString('en')} cables`} of{' '}
          {standing.length === 1 ? 'one trial' : `${standing.length} trials`}
        </a>
        : search them, put some of several trials side by side, follow a lot over time.
      </p>
    </section>
  );
}
