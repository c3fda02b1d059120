/** The solver's public face. */
export { poseReader, readPose, readPoseText } from './document/readPose.ts';
export { readRig, readRigText } from './document/readRig.ts';
export * from './document/refusal.ts';
export * from './document/rig.ts';
export * from './program.ts';
