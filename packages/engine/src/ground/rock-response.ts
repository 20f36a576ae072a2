/** How a rock answers a cutter: the five constants of the two-part cutting law. */
export interface RockResponse {
  /** Intrinsic specific energy: work per volume cut by a sharp cutter, friction of the flat left out [Pa]. */
  readonly specificEnergy: number;
  /** Contact strength: the highest mean stress between a wear flat and the rock [Pa]. */
  readonly contactStress: number;
  /** Friction angle between the flowing rock and the cutter face [rad]. */
  readonly faceFriction: number;
  /** Friction between a wear flat and the rock, in the drilling fluid [-]. */
  readonly flatFriction: number;
  /** Growth of the contact length with the depth of cut [-]. */
  readonly kappa: number;
}
