import type { APIRoute } from 'astro';
import text from '../../../THIRD-PARTY.md?raw';

/** The licences of what others wrote, as they ask to go with every copy. */
export const GET: APIRoute = () => new Response(text);
