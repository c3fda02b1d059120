import type { Reader } from '../../solver/document/reader.ts';
import type { Rig } from '../../solver/document/rig.ts';
import type { Binding } from '../bind.ts';
import type { Exercise } from '../exercise/exercise.ts';
import type { Values } from '../exercise/held.ts';
import type { Work } from '../responses/response.ts';
import type { Subject } from '../subject.ts';
import type { RequirementBase } from './requirement.ts';

/** A measurement over the inputs: one value an input, in the exercise's order. */
export type Meter = (values: Float64Array) => number;

interface KindBase<R extends RequirementBase> {
  kind: R['kind'];
  /** Reads its requirements as they stand in an exercise. */
  read: Reader<R>;
  unit(requirement: R): string;
  /** Parts and bones it speaks of. */
  bones(requirement: R): readonly string[];
  /** Inputs it speaks of. */
  inputs(requirement: R): readonly string[];
  /** What a miss means in general, with the numbers as they will be shown. */
  missed(requirement: R, shown: Shown): string;
  /** The same requirement of the exercise mirrored, where more than names changes. */
  reflected?(requirement: R): R;
  /** The same requirement with the values of inputs that it names, beside those it holds, changed. */
  withValues?(requirement: R, change: (values: Values) => Values): R;
  /** The same requirement with lengths of its own `factor` times as long; `allowed` in mm is scaled for all. */
  scaled?(requirement: R, factor: number): R;
}

/** What the rig does. */
export interface BehaviourKind<R extends RequirementBase> extends KindBase<R> {
  about: 'behaviour';
  /** It is met by at least what is allowed, not by at most. */
  atLeast?: true;
  meter(requirement: R, subject: Subject): Meter;
  /** Probes of its own in place of the common ones; then nothing is hunted for. */
  probes?(requirement: R, subject: Subject, ladder: readonly Float64Array[]): Float64Array[];
}

/** What stands in the document. */
export interface StructureKind<R extends RequirementBase> extends KindBase<R> {
  about: 'structure';
  inspect(requirement: R, built: Built): Inspection;
}

export interface Built {
  exercise: Exercise;
  rig: Rig;
  binding: Binding;
  cycle: readonly string[] | null;
  /** What was answered beside the rig. */
  values?: Work['values'] | undefined;
  order?: Work['order'] | undefined;
}

export interface Inspection {
  measured: number;
  /** What stands in the way, in words of the document. */
  places: string[];
  /** By how much it misses, with its sign, to tell misses apart. */
  profile?: readonly number[];
}

export interface Shown {
  measured: string;
  allowed: string;
  places: readonly string[];
  nameOf(spoken: string): string;
}

export type Kind<R extends RequirementBase = RequirementBase> = BehaviourKind<R> | StructureKind<R>;
