import { noBreak } from '../../../report/words/noBreak.ts';

/** A caution, beside the step that it concerns; `look` where it stands among other words. */
export function Mind({
  children: caution,
  look = 'caution',
}: {
  children: string;
  look?: 'caution' | 'note' | 'mind';
}) {
  return (
    <p class={look}>
      <b>Mind:</b> {noBreak(caution)}
    </p>
  );
}

/** Several cautions, one below the other. */
export function Minds({ texts }: { texts: readonly string[] }) {
  return (
    <>
      {texts.map((text) => (
        <Mind key={text}>{text}</Mind>
      ))}
    </>
  );
}
