import { signal } from '@preact/signals';
import type { Reply } from '../../../../trial/trial.ts';
import { recorder } from '../journal/device.ts';
import { say } from '../journal/journal.ts';

/** The cable whose maker is answered; empty for the first. */
export const makerOf = signal('');

export interface ReplyForm {
  askedOn: string;
  deadline: string;
  receivedOn: string;
  noReply: boolean;
  text: string;
  answer: string;
  by: string;
}

export const formOf = (reply: Reply | undefined): ReplyForm => ({
  askedOn: reply?.row.asked_on ?? '',
  deadline: reply?.deadline ?? '',
  receivedOn: reply?.row.received_on ?? '',
  noReply: reply?.noReply ?? false,
  text: reply?.text ?? '',
  answer: reply?.answer ?? '',
  by: reply?.by ?? '',
});

/**
 * Says what a maker was asked and what came back. A later row of the same name corrects the earlier one, which stays on record.
 *
 * @throws with a sentence for the person when it could not be kept
 */
export async function keepReply(cable: string, known: Reply | undefined, form: ReplyForm): Promise<void> {
  await say('reply', {
    ...(known?.row ?? {}),
    reply: known?.reply ?? `${cable.slice(0, 80)}-1`,
    cable,
    asked_on: form.askedOn,
    deadline: form.deadline,
    received_on: form.receivedOn,
    no_reply: form.noReply ? 'yes' : '',
    reply_text: form.text,
    answer: form.answer,
    by: form.by,
    ...(known === undefined && recorder.peek() !== '' ? { note: `asked by ${recorder.peek()}` } : {}),
  });
}
