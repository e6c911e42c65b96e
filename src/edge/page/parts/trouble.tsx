/** What stands in the way, in a sentence that is read out when it comes; nothing while the sentence is empty. */
export function Trouble({ children: sentence }: { children: string }) {
  if (sentence === '') return null;
  return (
    <p class="trouble-sentence" role="alert">
      {sentence}
    </p>
  );
}

/** What is wrong with what was typed into one field, which names it by `<field>-trouble`. */
export function FieldTrouble({ field, children: sentence }: { field: string; children: string }) {
  if (sentence === '') return null;
  return (
    <p class="trouble" id={`${field}-trouble`} role="alert">
      {sentence}
    </p>
  );
}
