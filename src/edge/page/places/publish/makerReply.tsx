import { useId, useState } from 'preact/hooks';
import type { Reply } from '../../../../trial/trial.ts';
import { Trouble } from '../../parts/trouble.tsx';
import { formOf, keepReply, type ReplyForm } from '../../store/publish/replies.ts';
import { sentenceOf } from '../../store/sentenceOf.ts';
import { useSaid } from './useSaid.ts';

interface MakerReplyProps {
  cable: string;
  name: string;
  /** What is on record so far. */
  known: Reply | undefined;
}

/** When a maker was asked, until when a reply is waited for, and what came back: printed with every later export. */
export function MakerReply({ cable, name, known }: MakerReplyProps) {
  const id = useId();
  const [form, setForm] = useState<ReplyForm>(formOf(known));
  const [said, setSaid] = useSaid();
  const [trouble, setTrouble] = useState('');
  const change = (next: Partial<ReplyForm>) => setForm({ ...form, ...next });
  const keep = async (event: SubmitEvent) => {
    event.preventDefault();
    setSaid('');
    setTrouble('');
    await keepReply(cable, known, form).then(
      () => setSaid('Kept. It is printed with every later export.'),
      (error: unknown) => setTrouble(sentenceOf(error)),
    );
  };
  const day = (name: 'askedOn' | 'deadline' | 'receivedOn', label: string) => (
    <div class="edit">
      <label for={`${id}-${name}`}>{label}</label>
      <input
        id={`${id}-${name}`}
        type="date"
        value={form[name].slice(0, 10)}
        onInput={(event) => change({ [name]: event.currentTarget.value })}
      />
    </div>
  );
  return (
    <form class="reply" onSubmit={(event) => void keep(event)}>
      <h3>
        What the maker of <bdi dir="auto">{name}</bdi> says
      </h3>
      <div class="box-fields">
        {day('askedOn', 'Draft sent on')}
        {day('deadline', 'Waiting for a reply until')}
        {day('receivedOn', 'Reply came on')}
        <div class="edit">
          <label for={`${id}-by`}>Who replied</label>
          <input id={`${id}-by`} value={form.by} onInput={(event) => change({ by: event.currentTarget.value })} />
        </div>
      </div>
      <div class="tick">
        <input
          type="checkbox"
          id={`${id}-none`}
          checked={form.noReply}
          onChange={(event) => change({ noReply: event.currentTarget.checked })}
        />
        <label for={`${id}-none`}>The day passed and no reply came</label>
      </div>
      <label for={`${id}-text`}>The reply, word for word</label>
      <textarea
        id={`${id}-text`}
        class="box-field"
        rows={4}
        maxLength={10000}
        dir="auto"
        value={form.text}
        onInput={(event) => change({ text: event.currentTarget.value })}
      />
      <label for={`${id}-answer`}>What we say to it</label>
      <textarea
        id={`${id}-answer`}
        class="box-field"
        rows={2}
        maxLength={10000}
        dir="auto"
        value={form.answer}
        onInput={(event) => change({ answer: event.currentTarget.value })}
      />
      <div class="buttons">
        <button type="submit" class="button main">
          Keep it
        </button>
      </div>
      <Trouble>{trouble}</Trouble>
      <p class="note" role="status">
        {said}
      </p>
    </form>
  );
}
