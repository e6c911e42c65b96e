import { touch } from '../../store/media.ts';
import { LETTERS } from './keys.ts';

/** The keys of the bench in one line, where there is a keyboard. */
export function KeyList() {
  if (touch.value) return null;
  return (
    <div class="key-list">
      <ul aria-label="Keys">
        <li>
          <kbd>Enter</kbd> record
        </li>
        <li>
          <kbd>↑</kbd> <kbd>↓</kbd> next reading
        </li>
        {Object.entries(LETTERS).map(([key, { words }]) => (
          <li key={key}>
            <kbd>{key.toUpperCase()}</kbd> {words}
          </li>
        ))}
      </ul>
      <p>A caliper or scale that types works as it is.</p>
    </div>
  );
}
