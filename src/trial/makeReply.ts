import type { Entry } from '../journal/entry.ts';
import { cell, nameOrNull } from './cells.ts';
import type { Reply } from './trial.ts';

/** A maker's reply out of its row. */
export function makeReply({ id, body }: Entry): Reply {
  return {
    entry: id,
    row: body,
    reply: cell(body, 'reply'),
    cable: cell(body, 'cable'),
    askedOn: nameOrNull(body, 'asked_on'),
    deadline: cell(body, 'deadline'),
    receivedOn: nameOrNull(body, 'received_on'),
    noReply: cell(body, 'no_reply').toLowerCase() === 'yes',
    text: cell(body, 'reply_text'),
    answer: cell(body, 'answer'),
    by: cell(body, 'by'),
  };
}
