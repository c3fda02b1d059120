/** One thing that the course teaches and counts. */
export interface Skill {
  /** As exercises and lessons name it. */
  readonly id: string;
  /** What a learner who has it can do. */
  readonly name: string;
  /** The lesson that teaches it, "3.4"; null where it grows through the whole course. */
  readonly lesson: string | null;
}

const byLesson: readonly (readonly [lesson: string | null, id: string, name: string])[] = [
  ['1.1', 'bones-and-rest', 'Say where a bone’s base and tip come to lie, at rest and posed'],
  ['1.2', 'parents', 'Tell in whose frame a number counts'],
  ['1.3', 'turning', 'Read a turn in axes, in angles and as a quaternion'],
  ['1.4', 'roll', 'Say where the side axes of a bone point'],
  ['1.5', 'roles', 'Give each bone its role'],
  ['1.6', 'sides', 'Say what the other side of a pair does to an axis'],
  ['2.1', 'bone-between', 'Put a bone in between'],
  ['2.2', 'follow-all', 'Make one bone follow all of another'],
  ['2.3', 'offset', 'Keep the offset at rest'],
  ['2.4', 'half-turn', 'Give a bend a helper that turns half as far'],
  ['2.5', 'twist', 'Share twist along a limb'],
  ['2.6', 'copied-roles', 'Keep copies off the skin'],
  ['2.7', 'locks', 'Lock what an animator must not touch'],
  ['2.8', 'corrective', 'Drive a corrective from a bend'],
  ['3.1', 'shortest-turn', 'Aim a bone at a thing'],
  ['3.2', 'in-line-at-rest', 'Switch an aim on without a jump'],
  ['3.2', 'pivot-in-the-middle', 'Put a pivot in the middle of what turns'],
  ['3.3', 'up-vector', 'Keep an aim from rolling over'],
  ['3.3', 'torsion', 'Say how an aim rolls: fixed up, or the shortest turn'],
  ['3.4', 'one-holder', 'Give two aims one holder'],
  ['3.5', 'vergence', 'Work out how far two eyes turn toward a thing'],
  ['3.6', 'limits', 'Keep a turn within limits, and let it follow in part'],
  ['3.7', 'reach', 'Reach with two bones and a pole'],
  ['3.8', 'whose-space', 'Choose whose space a holder lives in'],
  ['4.1', 'span', 'Span two points with one bone'],
  ['4.2', 'ratio', 'Read a ratio off a rest length'],
  ['4.3', 'volume', 'Keep the volume of what stretches, or not'],
  ['4.4', 'guide', 'Put a guide in the middle, off the skin'],
  ['4.5', 'piston', 'Build a piston without a cycle'],
  ['4.6', 'size-leak', 'Stop size from leaking into children'],
  ['5.1', 'switch', 'Put a switch on a control'],
  ['5.2', 'map', 'Drive an output from an input through a map'],
  ['5.3', 'inverted-map', 'Run a map from 1 to 0'],
  ['5.4', 'handing-over', 'Hand over from one link to another without a dip'],
  ['5.5', 'one-driver', 'Drive both sides alike'],
  ['5.6', 'sliding-spaces', 'Slide between spaces without a jump'],
  ['5.7', 'map-shapes', 'Choose the shape of a map'],
  ['5.8', 'order-and-cycles', 'Find the order of evaluation, and the cycle in it'],
  ['6.1', 'gaze-rig', 'Build a whole gaze rig'],
  ['6.2', 'limb-switch', 'Build a limb with a switch'],
  ['6.3', 'crane', 'Build a crane with a piston'],
  ['6.4', 'clinic', 'Mend a rig nobody has told you about'],
  ['6.5', 'delivery', 'Hand a rig over'],
  [null, 'mirror', 'Mirror what has been built'],
  [null, 'diagnose', 'Name the fault of a rig before mending it'],
  [null, 'name', 'Name bones and sides'],
];

/** Every skill of the course, in its order, those of unwritten lessons too. A lesson may teach two. */
export const SKILLS: readonly Skill[] = byLesson.map(([lesson, id, name]) => ({ id, name, lesson }));
