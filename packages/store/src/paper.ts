/** What a shop keeps by name, with every version: a traveler, a list of its own, a setting. */
export type PaperKind = "traveler" | "list" | "setting";

/** Which paper is meant. */
export interface PaperName {
  readonly kind: PaperKind;
  readonly name: string;
}

/** Who saved a version, when, and with what. */
export interface VersionEntry {
  /** 1 for the first [-]. */
  readonly version: number;
  /** In UTC, as `2026-03-14T15:09:26.535Z`. */
  readonly savedAt: string;
  readonly who: string;
  readonly note: string;
  /** Name and version of the program that saved it. */
  readonly program: string;
  /** Name of the job; empty for a list or a setting. */
  readonly title: string;
  /** Whether it could be worked up when it was saved; a traveler may be kept half filled. */
  readonly sound: boolean;
}

/** A version with its text, exactly as it was given. */
export interface SavedVersion extends VersionEntry {
  readonly body: string;
}

/** A save that was refused because somebody else had saved meanwhile; kept whole. */
export interface RefusedSave {
  /** 1 for the first refused save of the paper [-]. */
  readonly number: number;
  /** The version it built on [-]. */
  readonly basedOn: number;
  /** The version that was there already [-]. */
  readonly found: number;
  /** In UTC. */
  readonly refusedAt: string;
  readonly who: string;
  readonly note: string;
  readonly program: string;
  readonly body: string;
}

/** A paper and its newest version. */
export interface PaperEntry extends PaperName {
  readonly newest: VersionEntry;
  /** Refused saves kept with it [-]. */
  readonly refused: number;
}

/** What is to be saved. */
export interface Saving extends PaperName {
  readonly body: string;
  /** The version that the text was made from; 0 for a new paper [-]. */
  readonly basedOn: number;
  readonly who: string;
  readonly note: string;
}

/** A save that was taken, or one that was refused: then both versions are here, and both are kept. */
export type SaveOutcome =
  | { readonly ok: true; readonly saved: VersionEntry }
  | { readonly ok: false; readonly refused: RefusedSave; readonly newest: SavedVersion };
