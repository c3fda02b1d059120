/** One evaluation of a rig: the pose, the answers found so far, and the flags raised. The rig has no cycle. */
import type { Pose, Rig } from '../../src/solver/document/rig.ts';
import type { FlagName } from '../../src/solver/program.ts';

export class Evaluation {
  readonly rig: Rig;
  readonly pose: Pose;
  /** Each as flagKey gives it. */
  readonly raised = new Set<string>();
  /** Whether rounding decided something that the format leaves open. */
  isUndecided = false;
  private readonly known = new Map<string, unknown>();

  constructor(rig: Rig, pose: Pose) {
    this.rig = rig;
    this.pose = pose;
  }

  /** The answer to a question, worked out the first time it is asked. */
  once<T>(question: string, answer: () => T): T {
    if (!this.known.has(question)) this.known.set(question, answer());
    return this.known.get(question) as T;
  }

  /** All that was found on the way, bones at every stage among it. */
  answers(): unknown[] {
    return [...this.known.values()];
  }

  raise(flag: FlagName, bone: string, link: string | null): void {
    this.raised.add(flagKey(flag, bone, link));
  }
}

export const flagKey = (flag: FlagName, bone: string, link: string | null): string =>
  JSON.stringify([flag, bone, link]);
