import type { APIRoute } from 'astro';
import { courseOf } from '../course/skills/course.ts';

/** What the page of skills counts with: lessons, and exercises with their variants. */
export const GET: APIRoute = async () => Response.json(await courseOf());
