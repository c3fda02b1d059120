import type { APIRoute } from 'astro';
import { offerOf } from '../course/assign/offer-of.ts';

/** The exercises that an instructor may set. */
export const GET: APIRoute = async () => Response.json(await offerOf());
