import { keeping } from "../job/keep.ts";

const WORDS = {
  kept: "kept on this machine",
  keeping: "keeping …",
  cannot: "CANNOT BE KEPT on this machine",
} as const;

/** How the open job is kept. */
export function KeptWords() {
  const { kept, unsent, version } = keeping();
  const shop =
    version === undefined ? "not at the shop yet" : `version ${version} at the shop${unsent ? ", edited since" : ""}`;
  return (
    <span className="kept" data-kept={kept}>
      {WORDS[kept]}, {shop}
    </span>
  );
}
