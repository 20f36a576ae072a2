/**
 * Longest link that goes on a card [bytes]: more would make the squares of its code too fine for a wet print and a cheap
 * camera.
 *
 * @source (b) ISO/IEC 18004, recalled: a code of version 9 holds 180 bytes at correction M; its 53 squares and their border
 * stand on 25 mm at 0.4 mm each
 */
export const CARD_LINK_BYTES = 180;
