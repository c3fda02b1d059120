import type { APIRoute } from 'astro';
import { searchEntries } from '../course/search/entries.ts';

/** What the search page looks through. */
export const GET: APIRoute = async () => Response.json(await searchEntries());
