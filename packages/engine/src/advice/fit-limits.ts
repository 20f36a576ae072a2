/**
 * Confined strength above which a bit of 3 to 12 in holds its edge only with care [Pa].
 *
 * @source (c) common practice, no source
 */
export const CARE_STRENGTH = 100e6;

/**
 * Confined strength above which a bit of 3 to 12 in is the wrong tool at the weights its rigs have [Pa].
 *
 * @source (c) common practice, no source
 */
export const UNFIT_STRENGTH = 150e6;

/**
 * Rock abrasivity index from which a rock counts as very abrasive [-].
 *
 * @source (b) Plinninger 2010, classes of the rock abrasivity index, recalled; as a limit for the tool common practice
 */
export const CARE_ABRASIVITY = 60;

/**
 * Rock abrasivity index from which a rock counts as extremely abrasive [-].
 *
 * @source (b) Plinninger 2010, classes of the rock abrasivity index, recalled; as a limit for the tool common practice
 */
export const UNFIT_ABRASIVITY = 120;

/**
 * CERCHAR index from which a rock counts as highly abrasive [-].
 *
 * @source (b) ISRM suggested method 2014, classes, recalled; as a limit for the tool common practice
 */
export const CARE_CERCHAR = 3;

/**
 * CERCHAR index from which a rock counts as extremely abrasive [-].
 *
 * @source (b) ISRM suggested method 2014, classes, recalled; as a limit for the tool common practice
 */
export const UNFIT_CERCHAR = 5;

/**
 * Rock abrasivity index from which a rock counts as moderately abrasive: it wears, and does not yet speak against the
 * tool [-].
 *
 * @source (b) Plinninger 2010, classes of the rock abrasivity index, recalled
 */
export const WEARING_ABRASIVITY = 30;
