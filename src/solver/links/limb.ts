/**
 * Where the files of the reach keep, in scratch, the limb it bends: unit vectors along the upper and the lower bone and
 * to the target, each followed by its length in metres; unit vectors along the hinge and to the elbow's side; how far the
 * elbow lies along the way to the target and to its side, and the tip along that way from there, metres or signs alone.
 * From SPARE on there is room. Files take these as constants of their own, which engines fold; they do not fold what is imported.
 */
export const LIMB = { UPPER: 0, LOWER: 4, DIRECTION: 8, HINGE: 12, SIDE: 15, BEND: 18, SPARE: 21 } as const;
