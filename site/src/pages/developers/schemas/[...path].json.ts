import type { APIRoute, GetStaticPaths } from 'astro';
import { coreSchemas, toolSchemas } from '../../../lib/schemas.ts';

export const getStaticPaths = (() =>
  [...coreSchemas, ...toolSchemas].map(({ path, schema }) => ({
    params: { path },
    props: { schema },
  }))) satisfies GetStaticPaths;

export const GET: APIRoute = ({ props: { schema } }) =>
  new Response(`${JSON.stringify(schema, null, 2)}\n`);
