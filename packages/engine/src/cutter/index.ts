export {
  type Chamfer,
  chamferContactLength,
  chamferHeight,
  chamferRake,
  DEFAULT_CHAMFER_WIDTH,
  SUPPLIED_CHAMFER_ANGLE,
  TRADE_CHAMFERS,
  type TradeChamfer,
  USUAL_CHAMFER_ANGLE,
} from "./chamfer.ts";
export type { Cutter } from "./cutter.ts";
export {
  type CatalogSize,
  CUTTER_CATALOG,
  CUTTER_DIAMETER_TOLERANCE,
  CUTTER_LENGTH_TOLERANCE,
  type CutterOrder,
  catalogCutter,
  USUAL_LEACHED_DEPTH,
  USUAL_TABLE_THICKNESS,
} from "./cutter-catalog.ts";
export { faceHalfHeight, faceHalfWidth, grooveArea } from "./face-projection.ts";
export {
  carbideFlatArea,
  carbideRubs,
  type WearFlat,
  type WornCutter,
  wearFlat,
  wearGrade,
  wornHeightOfFlat,
} from "./wear-flat.ts";
