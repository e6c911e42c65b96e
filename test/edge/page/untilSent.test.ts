import { afterEach, describe, expect, it } from 'vitest';
import { type Held, held } from '../../../src/edge/page/store/journal/journal.ts';
import { untilSent } from '../../../src/edge/page/store/publish/untilSent.ts';
import { emptyOutbox } from '../../../src/journal/sync/outbox.ts';

afterEach(() => {
  held.value = null;
});

function holds(link: Held['link'], unacknowledged: string[], refused: Record<string, string> = {}): void {
  const outbox = { ...emptyOutbox('t'), unacknowledged, refused };
  held.value = { trial: 't', outbox, keeps: true, link, sentence: '', damaged: '', asked: link !== 'asking' };
}

describe('waiting until the bench computer has everything', () => {
  it('is over at once where nothing waits', async () => {
    expect(await untilSent(0)).toBe('');
    holds('away', []);
    expect(await untilSent(0)).toBe('');
  });

  it.each(['asking', 'joined'] as const)('gives entries on their way the time to arrive: %s', async (link) => {
    holds(link, ['a', 'b']);
    const over = untilSent(5000);
    setTimeout(() => holds(link, ['b']), 10);
    setTimeout(() => holds('joined', []), 30);
    expect(await over).toBe('');
  });

  it('says what holds them back, once it is known', async () => {
    holds('asking', ['a']);
    const over = untilSent(5000);
    setTimeout(() => holds('away', ['a']), 10);
    expect(await over).toMatch(/^One entry waits here, and the bench computer cannot be reached now/);
    holds('joined', ['a', 'b'], { a: 'No.', b: 'No.' });
    expect(await untilSent(5000)).toMatch(/^The bench computer would not take 2 entries/);
    holds('joined', ['a'], { a: 'No.' });
    expect(await untilSent(5000)).toMatch(/^The bench computer would not take an entry/);
  });

  it('does not wait for ever', async () => {
    holds('joined', ['a']);
    expect(await untilSent(20)).toMatch(/^Entries are still on their way/);
  });
});
