/// <reference lib="webworker" />
import { createEngine } from './direct.ts';
import { inPieces, type Question, type Reply } from './messages.ts';

/** The engine's own thread: a long recalculation never holds up the page. */
const engine = createEngine();

addEventListener('message', ({ data }: MessageEvent<Question>) => {
  void answer(data).then(post);
});

/** An answer that cannot cross to the page is a failure too, or who asked would wait for ever. */
function post(reply: Reply): void {
  try {
    for (const piece of inPieces(reply)) postMessage(piece);
  } catch (error) {
    postMessage({ number: reply.number, failure: String(error) } satisfies Reply);
  }
}

async function answer({ number, method, given }: Question): Promise<Reply> {
  try {
    const ask = engine[method].bind(engine) as (...args: readonly unknown[]) => Promise<unknown>;
    return { number, result: await ask(...given) };
  } catch (error) {
    return { number, failure: error instanceof Error ? error.message : String(error) };
  }
}
