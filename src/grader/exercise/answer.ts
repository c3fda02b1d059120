import type { Rig } from '../../solver/document/rig.ts';

export interface Answer {
  format: 'counterpose/answer';
  version: 1;
  exercise: string;
  edition: string;
  seed: number;
  rig?: Rig;
  response?: unknown;
  /** Part id to "bone" or "bone.switch". */
  parts?: Readonly<Record<string, string>>;
  learner?: string;
  made?: string;
  steps?: unknown;
  hints?: unknown;
  attempt?: number;
  guess?: string;
}
