/** Where a command writes: the process's own streams, or strings in a test. */
export interface Terminal {
  readonly say: (text: string) => void;
  readonly complain: (text: string) => void;
}

/** The terminal of this process. */
export const processTerminal: Terminal = {
  say: (text) => {
    process.stdout.write(`${text}\n`);
  },
  complain: (text) => {
    process.stderr.write(`${text}\n`);
  },
};
