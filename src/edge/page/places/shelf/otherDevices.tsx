import { useEffect } from 'preact/hooks';
import { turnedAway } from '../../store/api.ts';
import { askWhoIAm, me } from '../../store/devices.ts';

/** On a phone that the bench computer does not know: how it becomes known. */
export function NotKnownHere() {
  if (!turnedAway.value) return null;
  return (
    <p>
      <a class="button main" href="/pair">
        Add this phone with a code
      </a>
    </p>
  );
}

/** At the bench computer itself: the way to the phones. */
export function AddPhone() {
  useEffect(() => {
    void askWhoIAm();
  }, []);
  if (me.value === null || me.value.device !== null) return null;
  return (
    <section class="add-phone" aria-labelledby="add-phone">
      <h2 id="add-phone">A second pair of hands</h2>
      <p>A phone on the same network reads and records too.</p>
      <a class="button" href="/phones">
        Add a phone
      </a>
    </section>
  );
}
