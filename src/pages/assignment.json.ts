import { join } from 'node:path';
import type { APIRoute } from 'astro';
import { offerOf } from '../course/assign/offer-of.ts';

/** The exercises that an instructor may set. */
export const GET: APIRoute = () => Response.json(offerOf(join(process.cwd(), 'content')));
