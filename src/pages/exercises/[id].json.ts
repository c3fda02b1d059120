import type { APIRoute, GetStaticPaths } from 'astro';
import { exerciseFileIn, exerciseIdsIn, siteFolders } from '../../course/content-folders.ts';

const folders = siteFolders();

export const getStaticPaths = (() => exerciseIdsIn(folders).map((id) => ({ params: { id } }))) satisfies GetStaticPaths;

/** An exercise whole, for the workbench: { edition, definition }. */
export const GET: APIRoute = ({ params }) => Response.json(exerciseFileIn(folders, params.id!));
