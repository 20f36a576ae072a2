/** A fluid whose shear stress is proportional to the rate: water, and thin polymer taken as such. τ = μ γ. */
export interface NewtonianFluid {
  readonly model: "newtonian";
  /** Density [kg/m³]. */
  readonly density: number;
  /** Dynamic viscosity μ [Pa s]. */
  readonly viscosity: number;
}

/** A mud described by plastic viscosity and yield point. τ = YP + PV γ. */
export interface BinghamFluid {
  readonly model: "bingham";
  /** Density [kg/m³]. */
  readonly density: number;
  /** Plastic viscosity PV [Pa s]. */
  readonly plasticViscosity: number;
  /** Yield point YP [Pa]. */
  readonly yieldPoint: number;
}

/** A mud that thins with the rate of shear and has no yield stress. τ = K γⁿ. */
export interface PowerLawFluid {
  readonly model: "power-law";
  /** Density [kg/m³]. */
  readonly density: number;
  /** Consistency K, the stress at a shear rate of one per second [Pa sⁿ]. */
  readonly consistency: number;
  /** Flow index n, below one for a fluid that thins with the rate [-]. */
  readonly flowIndex: number;
}

/** A mud that has a yield stress and thins with the rate of shear. τ = τy + K γⁿ. */
export interface HerschelBulkleyFluid {
  readonly model: "herschel-bulkley";
  /** Density [kg/m³]. */
  readonly density: number;
  /** Yield stress τy [Pa]. */
  readonly yieldStress: number;
  /** Consistency K [Pa sⁿ]. */
  readonly consistency: number;
  /** Flow index n [-]. */
  readonly flowIndex: number;
}

/** The liquid pumped down the pipe, by the law its shear stress follows. */
export type DrillingFluid = NewtonianFluid | BinghamFluid | PowerLawFluid | HerschelBulkleyFluid;

/** The liquids and the air that a small rig circulates; it decides how fast the return has to rise. */
export type CirculationMedium = "water" | "bentonite" | "polymer" | "stiff-foam" | "air";
