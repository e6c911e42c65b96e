/**
 * Hears the bench computer say that a trial has news: server-sent events, read through fetch so that a phone can send its
 * token along. What is new is then read from the journal; the event says only that something is.
 */
import { withToken } from '../api.ts';

/**
 * Listens until the stream ends or `signal` aborts; calls `onNews` at every event. Settles when it ended, however it did:
 * whoever listens decides when to listen again.
 */
export async function listen(trial: string, onNews: () => void, signal: AbortSignal): Promise<void> {
  try {
    const answer = await fetch(`/api/live?${new URLSearchParams({ trial })}`, withToken({ signal }));
    if (!answer.ok || answer.body === null) return;
    const reader = answer.body.pipeThrough(new TextDecoderStream()).getReader();
    for (let line = ''; ; ) {
      const { done, value } = await reader.read();
      if (done) return;
      line += value;
      const lines = line.split('\n');
      line = lines.pop()!;
      if (lines.some((each) => each.startsWith('data:'))) onNews();
    }
  } catch {
    // The network went away: the journal notices by itself, and listens again.
  }
}
