// Lines typed at a prompt, or piped in; the end of the input is an answer, too.
import {createInterface} from "node:readline";

export interface Prompter {
  /** Shows a prompt and gives the line typed; null at the end of the input. */
  ask(prompt: string): Promise<string | null>;
  close(): void;
}

/** Reads from stdin and prompts on stdout. Piped answers are shown after the prompt, so that the talk can be read afterwards. */
export function makePrompter(input: NodeJS.ReadStream, output: NodeJS.WriteStream): Prompter {
  const typed = input.isTTY && output.isTTY;
  const reader = createInterface({input, output: typed ? output : undefined, terminal: typed, crlfDelay: Infinity});
  const lines = reader[Symbol.asyncIterator]();
  let ended = false;
  reader.on("SIGINT", () => reader.close());
  return {
    async ask(prompt) {
      if (ended) return null; // prompting again would wake the input up, and the process would wait for it
      if (typed) {
        reader.setPrompt(prompt);
        reader.prompt();
      } else output.write(prompt);
      const {done, value} = await lines.next();
      ended = done ?? false;
      if (!typed || done) output.write(`${done ? "" : value}\n`);
      return done ? null : value;
    },
    close: () => reader.close(),
  };
}
