import { expect, test } from 'vitest';
import { auditTolerances } from '../../../src/course/assign/audit/audit-tolerances.ts';
import { readExerciseFile } from '../../../src/course/exercise-files.ts';
import { contentDir } from '../../support/exercises.ts';

const audited = (id: string, tolerances: Record<string, number>) => {
  const told: number[] = [];
  const task = { ...readExerciseFile(contentDir, id), tolerances };
  return { audit: auditTolerances(task, (done) => told.push(done)), told };
};

test('a tolerance that parts right from wrong is sound', () => {
  const { audit, told } = audited('half-of-each', { height: 0.2 });
  expect(audit).toMatchObject({ isSound: true, rightRefused: 0, wrongPassed: 0, findings: [] });
  expect(audit.wrongTried).toBeGreaterThan(0);
  expect(told).toEqual([1, 2, 3, 4]);
});

test('one so loose that known wrongs pass is not, and they are named', () => {
  const { audit } = audited('half-of-each', { height: 10 });
  expect(audit.isSound).toBe(false);
  expect(audit.findings.join()).toContain('first-alone');
});

test('one that right rigs miss is not', () => {
  const { audit } = audited('one-vane', { 'follows-aside': 100 });
  expect(audit.isSound).toBe(false);
  expect(audit.rightRefused).toBe(audit.rightTried);
});

test('one that the untouched start meets is not', () => {
  const { audit } = audited('one-vane', { points: 180 });
  expect(audit.findings.join()).toContain('the untouched start already meets points');
});
