import fc from "fast-check";

/**
 * Property tests draw the same cases on every machine, so that a check that passed once passes again. To hunt with fresh
 * ones: `BITWRIGHT_SEED=12345 npx vitest run`.
 */
fc.configureGlobal({ seed: Number(process.env.BITWRIGHT_SEED ?? 20261125) });
