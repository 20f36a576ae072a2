import { type ClassifiedWord, classifyGround, HAZARD_WORDS } from "@bitwright/engine";

const ROLES = {
  main: "names the bed",
  minor: "a lesser part",
  modifier: "its state",
  noise: "says nothing of the ground",
} as const;

/** How a driller's phrase was read, word by word. */
export function PhraseReading({ phrase, bed }: { readonly phrase: string; readonly bed: string }) {
  const { words, reason, hazards, confidence, rockId } = classifyGround(phrase);
  return (
    <section className="sheet stack" aria-label={`How ${bed} was read`}>
      <h2>How “{phrase}” was read</h2>
      <p>
        <strong>{rockId ?? "not known"}</strong>
        {confidence === "guess" ? ", a guess" : ""}. {reason}
      </p>
      <ul className="read-words">
        {words.map((word) => (
          <ReadWord key={word.start} word={word} />
        ))}
      </ul>
      {hazards.length > 0 ? (
        <p>Brings in: {hazards.map((hazard) => HAZARD_WORDS[hazard] ?? hazard).join("; ")}.</p>
      ) : null}
      <p className="note soft">Where that is not so, pick the rock in the table; the words stay.</p>
    </section>
  );
}

function ReadWord({ word: { text, role, meaning } }: { readonly word: ClassifiedWord }) {
  return (
    <li className={`read-word ${role}`}>
      <strong>{text}</strong>
      <span className="note">
        {ROLES[role]}
        {meaning === undefined || meaning === text ? "" : `: ${meaning}`}
      </span>
    </li>
  );
}
