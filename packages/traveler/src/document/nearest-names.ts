/** How many letters must change, come, go or swap with a neighbour to make one word of the other [-]. */
function lettersApart(a: string, b: string): number {
  const rows: number[][] = [Array.from({ length: b.length + 1 }, (_, at) => at)];
  const cell = (i: number, j: number) => rows[i]?.[j] ?? 0;
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    rows.push(row);
    for (let j = 1; j <= b.length; j++) {
      const change = cell(i - 1, j - 1) + (a[i - 1] === b[j - 1] ? 0 : 1);
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      const swap = swapped ? cell(i - 2, j - 2) + 1 : Number.POSITIVE_INFINITY;
      row.push(Math.min(change, swap, cell(i - 1, j) + 1, cell(i, j - 1) + 1));
    }
  }
  return cell(a.length, b.length);
}

const plain = (name: string) => name.toLowerCase().replace(/[^a-z0-9]/g, "");

/** Names of a list that were probably meant by `typed`: close in spelling or holding it, nearest first, at most four. */
export function nearestNames(typed: string, names: readonly string[]): string[] {
  const wanted = plain(typed);
  const room = Math.max(1, Math.floor(wanted.length / 3));
  return names
    .map((name) => {
      const candidate = plain(name);
      const holds = wanted.length >= 3 && (candidate.includes(wanted) || wanted.includes(candidate));
      return { name, holds, apart: lettersApart(wanted, candidate) };
    })
    .filter(({ holds, apart }) => holds || apart <= room)
    .sort((a, b) => a.apart - b.apart)
    .slice(0, 4)
    .map(({ name }) => name);
}

/** The name of a list that `typed` is a slip of: a letter or two off, or other capitals and strokes. */
export function slipOf(typed: string, names: readonly string[]): string | undefined {
  const wanted = plain(typed);
  return names.find((name) => lettersApart(wanted, plain(name)) <= Math.floor(wanted.length / 4));
}

/** Whether a person's text names an entry by its id or its name, whatever the capitals, spaces and strokes. */
export function isCalled(entry: { readonly id: string; readonly name?: string | undefined }, text: string): boolean {
  return [entry.id, entry.name ?? ""].some((name) => name !== "" && plain(name) === plain(text));
}

/** `one of a, b, c`, with those that were probably meant first in line where the list is long. */
export function oneOf(typed: string, names: readonly string[]): string {
  const near = nearestNames(typed, names);
  const hint = near.length > 0 ? ` (did you mean ${near.join(" or ")}?)` : "";
  const most = 12;
  const listed =
    names.length > most ? `${names.slice(0, most).join(", ")} and ${names.length - most} more` : names.join(", ");
  return `give one of ${listed}${hint}`;
}
