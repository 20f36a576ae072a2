/** Thrown inside the reader only: the first thing that makes a file unreadable, with its line. */
export class Unreadable extends Error {
  readonly line: number | undefined;
  constructor(reason: string, line?: number) {
    super(reason);
    this.line = line;
  }
}
