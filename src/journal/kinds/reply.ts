import { needed, type TableShape, text } from '../tableShape.ts';

/** What a maker was asked and what came back. A deadline may lie ahead, so it is kept as words. */
export const REPLY_TABLE: TableShape = {
  kind: 'reply',
  file: 'replies.csv',
  key: ['reply'],
  columns: [
    needed('reply', 'Short name of the exchange'),
    needed('cable', 'Cable that it is about', { refersTo: 'cable' }),
    text('asked_on', 'Day on which the draft was sent', { moment: true }),
    text('deadline', 'Day up to which a reply was waited for'),
    text('received_on', 'Day on which the reply came', { moment: true }),
    text('no_reply', 'Whether the deadline passed without one', { values: ['yes', 'no'] }),
    text('reply_text', 'The reply, word for word'),
    text('answer', 'What the tester says to it'),
    text('by', 'Who replied'),
    text('note', 'Anything else'),
  ],
};
