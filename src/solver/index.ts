/** The solver's public face. */
export * from './document/refusal.ts';
export * from './document/rig.ts';
export * from './program.ts';
