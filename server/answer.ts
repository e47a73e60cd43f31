// Answers that come in pieces: a JSON value a line while it is worked out, and files to be kept.
import type {Download} from "../commands/rack/rack-command.ts";

/** One JSON value a line; a fault on the way ends the stream, so that half an answer is never taken for a whole one. */
export function lines(values: AsyncIterable<unknown>): Response {
  return new Response(streamOf(values, (value) => `${JSON.stringify(value)}\n`), {headers: {"content-type": "application/x-ndjson; charset=utf-8", "cache-control": "no-store"}});
}

/** A file that a browser keeps and never shows. */
export function download({name, mime, pieces}: Download): Response {
  const headers = {"content-type": mime, "content-disposition": `attachment; filename="${name.replace(/[^\w.-]/g, "-")}"`, "cache-control": "no-store"};
  return new Response(streamOf(pieces, (piece) => piece), {headers});
}

function streamOf<T>(values: AsyncIterable<T>, print: (value: T) => string): ReadableStream<Uint8Array> {
  const encoder = new TextEncoder();
  const iterator = values[Symbol.asyncIterator]();
  return new ReadableStream<Uint8Array>({
    async pull(controller) {
      const {done, value} = await iterator.next();
      if (done) controller.close();
      else controller.enqueue(encoder.encode(print(value)));
    },
    async cancel() {
      await iterator.return?.();
    },
  });
}
