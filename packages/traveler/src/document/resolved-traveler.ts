import type { Band, Finding, PriceSheet, SlipForm } from "@bitwright/engine";
import type { ResolvedBit } from "./resolved-bit.ts";
import type { ResolvedInquiry } from "./resolved-inquiry.ts";

export type * from "./resolved-bit.ts";
export type * from "./resolved-inquiry.ts";

/**
 * The traveler as the engine needs it: SI numbers, named defaults filled in, ids checked against the lists (the
 * program's and the shop's own). Made by `parseTraveler`; never stored.
 */
export interface ResolvedTraveler {
  readonly job: ResolvedJob;
  readonly inquiry: ResolvedInquiry;
  readonly ground: ResolvedGround;
  readonly bit: ResolvedBit;
  /** Usual prices stand where none were given. */
  readonly prices: PriceSheet;
  readonly overrides: ResolvedOverrides;
  readonly lists: ResolvedLists;
  /** Remarks found while reading that are no errors: a gap between beds, a speed over the rig's highest. */
  readonly findings: readonly Finding[];
}

export interface ResolvedJob {
  readonly name: string;
  readonly number?: string;
  readonly customer: string;
  readonly shop: string;
  readonly date?: string;
  readonly notes?: string;
  /** Currency of every price on the document, for example `USD`. */
  readonly currency: string;
}

export interface ResolvedGround {
  /** In order of depth, no overlaps; gaps are possible and are then findings. */
  readonly beds: readonly ResolvedBed[];
  /** Where the column came from, in the words of the document. */
  readonly source?: string;
}

export interface ResolvedBed {
  /** Path of the bed in the document: `ground.beds[2]`. */
  readonly path: string;
  /** A short name for tables: the phrase, else the rock. */
  readonly name: string;
  /** Depth of the top [m]. */
  readonly top: number;
  /** Depth of the bottom [m]. */
  readonly bottom: number;
  /** The driller's words. */
  readonly phrase?: string;
  /** Id of the rock: of the rock table or of the shop's own rocks; absent where neither id nor known words were given. */
  readonly rock?: string;
  /** How the rock was settled: given by id, or read from the phrase. */
  readonly rockFrom?: "entered" | "phrase";
  /** Unconfined strength [Pa]; absent where it is to come from the rock table. */
  readonly strength?: Band;
  /** The log reading that the strength is to be worked from, where one was given. */
  readonly strengthFrom?: ResolvedStrengthReading;
  readonly notes?: string;
}

/** A log reading and the named correlation that turns it into strength. */
export interface ResolvedStrengthReading {
  /** Id of the correlation. */
  readonly correlation: string;
  /** Slowness [s/m], Young's modulus [Pa], porosity [-] or velocity [m/s], as the correlation asks. */
  readonly reading: number;
  /** Share of clay in the rock [-]. */
  readonly clayShare?: number;
  /** Bulk density [kg/m³]. */
  readonly density?: number;
}

/** Values that a person set over those of the program. */
export interface ResolvedOverrides {
  /** By rock id. */
  readonly rocks: Readonly<Record<string, RockOverride>>;
  /** Weight on the bit to work with [N]. */
  readonly weight?: number;
  /** Rotary speed to work with [rad/s]. */
  readonly rotarySpeed?: number;
  /** Flow to work with [m³/s]. */
  readonly flow?: number;
  /** The form of slip that cleaning goes by. */
  readonly slip?: SlipForm;
  readonly limits: LimitOverrides;
}

/**
 * Properties of a rock set by hand, named as in the rock table; a single figure is a band without width.
 */
export interface RockOverride {
  /** Unconfined compressive strength [Pa]. */
  readonly ucs?: Band;
  /** Unconfined strength of the stones in loose or mixed ground [Pa]. */
  readonly clastUcs?: Band;
  /** Specific energy over confined strength [-]. */
  readonly specificEnergyRatio?: Band;
  /** Contact strength under a wear flat over confined strength [-]. */
  readonly contactStressRatio?: Band;
  /** Friction angle at the cutter face [rad]. */
  readonly faceFriction?: Band;
  /** Friction of a wear flat on the rock [-]. */
  readonly flatFriction?: Band;
  /** Growth of the contact length with the depth of cut [-]. */
  readonly kappa?: Band;
  /** Internal friction angle [rad]. */
  readonly frictionAngle?: Band;
  /** Bulk density [kg/m³]. */
  readonly density?: Band;
  /** Quartz share [-]. */
  readonly quartzShare?: Band;
  /** Minerals counted by their grinding hardness against quartz [-]. */
  readonly equivalentQuartz?: Band;
  /** CERCHAR abrasivity index [-]. */
  readonly cerchar?: Band;
}

/** Limits set by hand in place of the program's. */
export interface LimitOverrides {
  /** Least flow that cools the bit [m³/s]. */
  readonly coolingFlow?: number;
  /** Least uphole speed that cleans [m/s]. */
  readonly upholeSpeed?: number;
  /** Largest share of cuttings in the returns [-]. */
  readonly cuttingsShare?: number;
  /** Largest rate allowed [m/s]. */
  readonly rate?: number;
  /** Largest torque allowed at the bit [N m]. */
  readonly torque?: number;
}

/** Lists a shop adds to those of the program, in SI. */
export interface ResolvedLists {
  readonly rocks: readonly OwnRock[];
  readonly cutters: readonly OwnCutter[];
}

/** A rock of the shop's own: what it is like and where it differs. */
export interface OwnRock extends RockOverride {
  readonly id: string;
  readonly name: string;
  /** Id of the rock of the table that fills what is not given here. */
  readonly like: string;
}

/** A cutter of the shop's own. */
export interface OwnCutter {
  readonly code: string;
  /** Diameter of the diamond face [m]. */
  readonly faceDiameter: number;
  /** Length, diamond table included [m]. */
  readonly length: number;
  /** Thickness of the diamond table [m]. */
  readonly tableThickness?: number;
}
