/** Where a command writes: the process's own streams, or strings in a test. */
export interface Terminal {
  readonly say: (text: string) => void;
  readonly complain: (text: string) => void;
}

// A reader that has seen enough, such as `head`, closes the pipe: that is no fault and ends the command quietly.
process.stdout.on("error", (error: { code?: string }) => {
  if (error.code === "EPIPE") process.exit(0);
  throw error;
});

/** The terminal of this process. */
export const processTerminal: Terminal = {
  say: (text) => {
    process.stdout.write(`${text}\n`);
  },
  complain: (text) => {
    process.stderr.write(`${text}\n`);
  },
};
