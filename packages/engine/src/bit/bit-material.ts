/** What the body of a bit is made of. */
export type BitMaterial = "steel" | "matrix";
