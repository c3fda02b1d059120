/**
 * The results of the corpus to the bit, as recorded. The browser tests compute the same hash in every browser. A change
 * of the solver that changes rounding changes it: record it anew then, on purpose, for marks may change with it.
 */
import { describe, expect, it } from 'vitest';
import { FLAGS } from '../../src/solver/index.ts';
import { programOf, solved } from '../oracle/subject.ts';
import { bitHash } from './corpus/bitHash.ts';
import { corpus } from './corpus/corpus.ts';
import { corpusHash } from './corpus/corpusHash.ts';

const RECORDED = 'c92f884b27d12675';

describe('the bits of the corpus', () => {
  it('are as recorded', () => {
    expect(corpusHash()).toBe(RECORDED);
  });

  it('come from every kind of link, input, output and flag', () => {
    const entries = corpus();
    const rigs = entries.map(({ rig }) => rig);
    const kinds = rigs.flatMap(({ bones }) => bones.flatMap(({ links }) => (links ?? []).map(({ kind }) => kind)));
    expect([...new Set(kinds)].sort()).toEqual(['aim', 'follow', 'limit', 'reach', 'share', 'span']);
    const drivers = rigs.flatMap((rig) => rig.drivers ?? []);
    const inputs = drivers.flatMap(({ inputs }) => inputs.flatMap(({ from }) => Object.keys(from)));
    expect([...new Set(inputs)].sort()).toEqual(['gap', 'shift', 'switch', 'turn']);
    const outputs = drivers.map(({ output }) =>
      'field' in output ? output.field : 'switch' in output ? 'switch' : output.channel.slice(0, 4),
    );
    expect([...new Set(outputs)].sort()).toEqual(['fraction', 'move', 'switch', 'turn', 'weight']);
    const flags = entries.flatMap(({ rig, poses }) => {
      const program = programOf(rig);
      return poses.flatMap((pose) => solved(program, pose).flags.map(({ flag }) => flag));
    });
    expect([...new Set(flags)].sort()).toEqual([...FLAGS].sort());
  });

  it('would show one bit of one number', () => {
    const digest = (numbers: number[]) => {
      const hash = bitHash();
      hash.addNumbers(numbers);
      return hash.digest();
    };
    expect(digest([1, 2])).not.toBe(digest([1, 2 + Number.EPSILON * 2]));
    expect(digest([0])).not.toBe(digest([-0]));
    // FNV-1a of "a" and "foobar" (from memory).
    const textual = (text: string) => {
      const hash = bitHash();
      hash.addText(text);
      return hash.digest();
    };
    expect([textual(''), textual('a'), textual('foobar')]).toEqual([
      'cbf29ce484222325',
      'af63dc4c8601ec8c',
      '85944171f73967e8',
    ]);
  });
});
