/** That the server will not or cannot listen where it was told to. */
export class ListenRefused extends Error {
  constructor(message: string) {
    super(message);
    this.name = "ListenRefused";
  }
}
