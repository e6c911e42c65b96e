import { afterEach, describe, expect, it } from 'vitest';
import { type Held, held } from '../../../src/edge/page/store/journal/journal.ts';
import { AWAY } from '../../../src/edge/page/store/publish/files.ts';
import { forgetSaid, lastSaid } from '../../../src/edge/page/store/publish/lastSaid.ts';
import { emptyOutbox } from '../../../src/journal/sync/outbox.ts';

afterEach(() => {
  held.value = null;
  forgetSaid();
});

function stands(link: Held['link']): void {
  const outbox = emptyOutbox('t');
  held.value = { trial: 't', outbox, keeps: true, link, sentence: '', damaged: '', asked: true };
}

describe('the line about what was made last', () => {
  it('no longer says that the bench computer is away once it is back', () => {
    stands('away');
    lastSaid.value = { by: 'report', sentence: AWAY };
    expect(lastSaid.value.sentence).toBe(AWAY);
    stands('joined');
    expect(lastSaid.value).toEqual({ by: '', sentence: '' });
  });

  it('keeps anything else that was said', () => {
    stands('away');
    lastSaid.value = { by: 'cards', sentence: 'one.png is among your downloads.' };
    stands('joined');
    expect(lastSaid.value).toEqual({ by: 'cards', sentence: 'one.png is among your downloads.' });
  });
});
