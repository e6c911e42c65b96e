import { useState } from 'preact/hooks';
import { Trouble } from '../../../parts/trouble.tsx';
import { useKeep } from './useKeep.ts';

/** What is printed on the jacket, word for word. */
export function Print() {
  const [text, setText] = useState('');
  const [keep, trouble, say] = useKeep();
  const submit = (event: Event) => {
    event.preventDefault();
    if (text.trim() === '') return say('Found nothing; type what is printed, or press the other key.');
    keep([{ seen: text.trim(), where: '', count: '' }]);
  };
  return (
    <form onSubmit={submit}>
      <p class="note">
        All round and along the piece, word for word, with its marks and spaces. A photo of it is a proof shot.
      </p>
      <p class="written">
        <label for="look-print">What is printed</label>
        <input
          id="look-print"
          type="text"
          maxLength={500}
          autocomplete="off"
          value={text}
          onInput={(event) => setText(event.currentTarget.value)}
        />
      </p>
      <Trouble>{trouble}</Trouble>
      <div class="buttons">
        <button type="submit" class="button main">
          Keep these words
        </button>
        <button type="button" class="button" onClick={() => keep([{ seen: 'no print', where: '', count: '' }])}>
          Nothing is printed
        </button>
      </div>
    </form>
  );
}
