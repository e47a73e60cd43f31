// How far long work has come, on one line of the terminal that is written over.

export interface Progress {
  done(count: number): void;
  end(): void;
}

/** Nothing is shown where the output is no terminal, or the work is short. */
export function progress(what: string, of: number): Progress {
  const shows = process.stderr.isTTY === true && of > 3;
  return {
    done(count) {
      if (shows) process.stderr.write(`\r${what}: ${count} of ${of}`);
    },
    end() {
      if (shows) process.stderr.write("\r\u001b[K");
    },
  };
}
