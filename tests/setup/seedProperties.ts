import fc from 'fast-check';

/**
 * Property tests draw the same cases in every run, so that a change that passes here passes
 * elsewhere. `WINDLASS_SEED=any` draws new ones, `WINDLASS_SEED=<number>` repeats a draw.
 */
const asked = process.env.WINDLASS_SEED;

if (asked === undefined) fc.configureGlobal({ seed: 20_270_315 });
else if (asked !== 'any') fc.configureGlobal({ seed: Number(asked) });
