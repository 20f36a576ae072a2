/** Name and version as printed on every sheet. */
export const PROGRAM = "Bitwright 0.1.0";
