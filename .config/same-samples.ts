import fc from 'fast-check';

/** Random samples are the same on every machine, so that a check that passed still passes; OCTAVO_SEED draws others. */
fc.configureGlobal({ seed: Number(process.env['OCTAVO_SEED'] ?? 1) });
