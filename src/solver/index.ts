/** The solver's public face. */
export { poseReader, readPose, readPoseText } from './document/readPose.ts';
export { readRig, readRigText } from './document/readRig.ts';
export * from './document/refusal.ts';
export * from './document/rig.ts';
export type { Binding } from './mesh/binding.ts';
export { bindMesh } from './mesh/bindMesh.ts';
export { skinMesh } from './mesh/skinMesh.ts';
export { copyAcross } from './mirror/copyAcross.ts';
export { reflect } from './mirror/reflect.ts';
export { reflectPose } from './mirror/reflectPose.ts';
export { LAST_WORD, type Side, type SideWords, sideOf, swapSide } from './mirror/sides.ts';
export * from './program.ts';
