/** One device's open ear: a stream of server-sent events that never holds more than one number back. */
export interface LiveStream {
  stream: ReadableStream<Uint8Array>;
  /** Says that the trial's journal reaches up to `last`. */
  tell(last: number): void;
  /** A comment that keeps what lies between from closing a silent connection. */
  beat(): void;
  close(): void;
}

const ENCODER = new TextEncoder();
/** Server-sent events: a line that begins with a colon is a comment. WHATWG HTML, §9.2.5 "Parsing an event stream". */
const BEAT = ENCODER.encode(': still here\n\n');

/**
 * A stream of events `entries` with {"last": n}. Whoever reads too slowly gets the newest number only: the numbers in
 * between say nothing that it does not. `onGone` hears when the reader has left or the stream was closed, once.
 */
export function liveStream(onGone: () => void): LiveStream {
  let controller: ReadableStreamDefaultController<Uint8Array> | null = null;
  let heldBack: number | null = null;

  const gone = () => {
    if (controller === null) return;
    controller = null;
    onGone();
  };
  const roomy = () => (controller?.desiredSize ?? 0) > 0;
  const send = () => {
    if (controller === null || heldBack === null || !roomy()) return;
    const last = heldBack;
    // Before it is handed on: a reader that waits pulls again from within.
    heldBack = null;
    controller.enqueue(ENCODER.encode(`event: entries\ndata: ${JSON.stringify({ last })}\n\n`));
  };

  const stream = new ReadableStream<Uint8Array>(
    {
      start(made) {
        controller = made;
      },
      pull: send,
      cancel: gone,
    },
    { highWaterMark: 1 },
  );
  return {
    stream,
    tell(last) {
      heldBack = Math.max(heldBack ?? 0, last);
      send();
    },
    beat() {
      if (roomy()) controller?.enqueue(BEAT);
    },
    close() {
      const open = controller;
      gone();
      open?.close();
    },
  };
}
