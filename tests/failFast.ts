import fc from 'fast-check';

// Where nobody waits to look closer, a property ends at the first counterexample: to make it smaller may take minutes, and more
// memory than there is where each try makes solids. Its seed is told, so that it can be made smaller elsewhere.
if (process.env.CI === 'true') fc.configureGlobal({ endOnFailure: true });
