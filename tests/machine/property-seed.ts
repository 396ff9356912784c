import fc from "fast-check";

/** Every property begins at one seed, so that a run can be had again; `TETHERLINE_SEED` sets another. */
const seed = Number(process.env["TETHERLINE_SEED"] ?? 1);
if (!Number.isSafeInteger(seed)) throw new RangeError("TETHERLINE_SEED is no whole number");
fc.configureGlobal({ seed });
