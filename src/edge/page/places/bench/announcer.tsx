import { announced } from '../../store/bench/said.ts';

/** What was just done, for those who hear the page. A changing key makes the same words heard twice. */
export function Announcer() {
  const { text, number } = announced.value;
  return (
    <div class="hidden" role="status" aria-live="polite" id="said">
      <span key={number}>{text}</span>
    </div>
  );
}
