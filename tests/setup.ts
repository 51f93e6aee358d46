import fc from 'fast-check';

// Random cases are the same in every run, so that a red run can be repeated; `KERF_SEED=$RANDOM npm test` tries others.
fc.configureGlobal({ seed: Number(process.env.KERF_SEED ?? 20261125) });
