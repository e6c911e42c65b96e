interface ReasonProps {
  /** Unique on the page. */
  id: string;
  label: string;
  why: string;
  onWhy: (why: string) => void;
  /** Reasons that come up again and again; anything else is written. */
  usual?: readonly string[];
}

/** Longest reason, in characters: a few words are asked for. */
const LONGEST = 500;

/** Why something is done, in the words of whoever does it. */
export function Reason({ id, label, why, onWhy, usual = [] }: ReasonProps) {
  return (
    <>
      {usual.length > 0 && (
        <fieldset class="choice-list reasons">
          <legend>Why</legend>
          {usual.map((reason) => (
            <label key={reason}>
              <input type="radio" name={`${id}-usual`} checked={why === reason} onChange={() => onWhy(reason)} />
              <span>{reason}</span>
            </label>
          ))}
        </fieldset>
      )}
      <p class="written">
        <label for={id}>{label}</label>
        <input
          id={id}
          type="text"
          maxLength={LONGEST}
          autocomplete="off"
          value={why}
          onInput={(event) => onWhy(event.currentTarget.value)}
        />
      </p>
    </>
  );
}
