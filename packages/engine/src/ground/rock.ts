import type { Band, Source } from "../quantity/index.ts";
import type { Hazard } from "./hazard.ts";

/** The kinds of ground, by how the rock came to be. */
export type RockFamily =
  | "soil"
  | "clastic"
  | "carbonate"
  | "evaporite"
  | "organic"
  | "siliceous"
  | "igneous"
  | "metamorphic";

/** The properties of a rock that every entry of the table has. All are bands: a rock name is a range, never a number. */
export interface RockProperties {
  /** Unconfined compressive strength of the intact rock; of the bulk for loose ground [Pa]. */
  readonly ucs: Band;
  /** Internal friction angle [rad]. */
  readonly frictionAngle: Band;
  /** Bulk density [kg/m³]. */
  readonly density: Band;
  /** Share of quartz by volume [-]. */
  readonly quartzShare: Band;
  /** All minerals counted by their grinding hardness against quartz [-]. */
  readonly equivalentQuartz: Band;
  /** CERCHAR abrasivity index [-]. */
  readonly cerchar: Band;
  /** Friction between a worn diamond flat and the rock under water or mud [-]. */
  readonly flatFriction: Band;
  /** Friction angle between the flowing cuttings and the cutter face [rad]. */
  readonly faceFriction: Band;
  /** Growth of the contact length with the depth of cut [-]. */
  readonly kappa: Band;
  /** Intrinsic specific energy over confined strength [-]. */
  readonly specificEnergyRatio: Band;
  /** Contact strength under a wear flat over confined strength [-]. */
  readonly contactStressRatio: Band;
  /** Thermal conductivity [W/(m K)]. */
  readonly thermalConductivity: Band;
  /** Thermal diffusivity [m²/s]. */
  readonly thermalDiffusivity: Band;
}

/** The properties that only some rocks have. */
export interface RockExtraProperties {
  /** Unconfined compressive strength of the stones in loose or mixed ground [Pa]. */
  readonly clastUcs?: Band;
  /** Tensile strength [Pa]. */
  readonly tensileStrength?: Band;
}

/** One class of ground as a shop meets it. */
export interface Rock extends RockProperties, RockExtraProperties {
  /** Kebab-case name by which beds and travelers refer to it. */
  readonly id: string;
  /** Name as printed. */
  readonly name: string;
  readonly family: RockFamily;
  /** For a rock of the shop's own: id of the rock of the table it was made from. */
  readonly likeId?: string;
  readonly hazards: readonly Hazard[];
  /** Where each property of this entry comes from. */
  readonly sources: Readonly<Record<keyof RockProperties, Source> & Partial<Record<keyof RockExtraProperties, Source>>>;
}

/** A band written together with where it comes from. */
export interface SourcedBand {
  readonly band: Band;
  readonly source: Source;
}

/** A row of the rock table as it is written: each property beside its source. */
export interface RockRow
  extends Readonly<Record<keyof RockProperties, SourcedBand>>,
    Readonly<Partial<Record<keyof RockExtraProperties, SourcedBand>>> {
  readonly id: string;
  readonly name: string;
  readonly family: RockFamily;
  readonly hazards: readonly Hazard[];
}

/**
 * A rock from its row of the table: the bands on the rock, their sources in `sources`.
 *
 * @source (d) arrangement of the row, no figure of its own
 */
export function rockFromRow(row: RockRow): Rock {
  const { id, name, family, hazards, clastUcs, tensileStrength, ...rest } = row;
  return {
    id,
    name,
    family,
    hazards,
    ucs: rest.ucs.band,
    frictionAngle: rest.frictionAngle.band,
    density: rest.density.band,
    quartzShare: rest.quartzShare.band,
    equivalentQuartz: rest.equivalentQuartz.band,
    cerchar: rest.cerchar.band,
    flatFriction: rest.flatFriction.band,
    faceFriction: rest.faceFriction.band,
    kappa: rest.kappa.band,
    specificEnergyRatio: rest.specificEnergyRatio.band,
    contactStressRatio: rest.contactStressRatio.band,
    thermalConductivity: rest.thermalConductivity.band,
    thermalDiffusivity: rest.thermalDiffusivity.band,
    ...(clastUcs ? { clastUcs: clastUcs.band } : {}),
    ...(tensileStrength ? { tensileStrength: tensileStrength.band } : {}),
    sources: {
      ucs: rest.ucs.source,
      frictionAngle: rest.frictionAngle.source,
      density: rest.density.source,
      quartzShare: rest.quartzShare.source,
      equivalentQuartz: rest.equivalentQuartz.source,
      cerchar: rest.cerchar.source,
      flatFriction: rest.flatFriction.source,
      faceFriction: rest.faceFriction.source,
      kappa: rest.kappa.source,
      specificEnergyRatio: rest.specificEnergyRatio.source,
      contactStressRatio: rest.contactStressRatio.source,
      thermalConductivity: rest.thermalConductivity.source,
      thermalDiffusivity: rest.thermalDiffusivity.source,
      ...(clastUcs ? { clastUcs: clastUcs.source } : {}),
      ...(tensileStrength ? { tensileStrength: tensileStrength.source } : {}),
    },
  };
}
