import { join } from 'node:path';
import type { APIRoute, GetStaticPaths } from 'astro';
import { exerciseIds, readExerciseFile } from '../../course/exercise-files.ts';

const contentDir = join(process.cwd(), 'content');

export const getStaticPaths = (() =>
  exerciseIds(contentDir).map((id) => ({ params: { id } }))) satisfies GetStaticPaths;

/** An exercise whole, for the workbench: { edition, definition }. */
export const GET: APIRoute = ({ params }) => Response.json(readExerciseFile(contentDir, params.id!));
