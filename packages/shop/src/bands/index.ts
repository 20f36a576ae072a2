export { BAND_FIGURES, bandText, driversText, heldText } from "./band-words.ts";
export { bandsCsv } from "./bands-csv.ts";
export { type BandsDrawingInput, bandsDrawings } from "./bands-drawing.ts";
