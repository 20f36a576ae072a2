export { type Attributes, element, type Svg } from "./element.ts";
export { linePath, type PagePoint, pair, softPath } from "./path-data.ts";
export { qrSvg } from "./qr-svg.ts";
export { svgNumber } from "./svg-number.ts";
export { thinned } from "./thinned.ts";
export { xmlText } from "./xml-text.ts";
