/**
 * Field units for tests of the engine, which itself knows SI only. Exact by definition:
 * inch 25.4 mm, pound 0.45359237 kg (international yard and pound agreement 1959), gallon 231 in³,
 * standard gravity 9.80665 m/s².
 */
export const inch = 0.0254;
export const foot = 12 * inch;
export const pound = 0.45359237;
export const poundForce = pound * 9.80665;
export const gallon = 231 * inch ** 3;
export const gpm = gallon / 60;
export const psi = poundForce / inch ** 2;
export const ppg = pound / gallon;
export const footPound = poundForce * foot;
export const horsepower = 550 * footPound;
export const poundPerFoot = pound / foot;
export const footPerMinute = foot / 60;
export const footPerHour = foot / 3600;
export const rpm = (2 * Math.PI) / 60;
export const degree = Math.PI / 180;
export const mm = 1e-3;
export const MPa = 1e6;
export const centipoise = 1e-3;
/** Yield point and gel strength unit: lbf per 100 ft². */
export const poundPer100SquareFeet = poundForce / (100 * foot ** 2);
