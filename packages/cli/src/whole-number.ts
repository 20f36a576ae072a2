import { Complaint } from "./complaint.ts";

/** The whole number that an option gives, or `otherwise` where it is not given. */
export function wholeNumber(
  /** Name of the option: `--samples`. */
  option: string,
  text: string | undefined,
  otherwise: number,
  least: number,
  most: number,
): number {
  if (text === undefined) return otherwise;
  const number = Number(text);
  if (text.trim() === "" || !Number.isInteger(number) || number < least || number > most) {
    throw new Complaint([`${option}: got "${text}"; give a whole number from ${least} to ${most}`]);
  }
  return number;
}
