import { isNamedByContent } from '../Stored.ts';
import { stored } from './stored.ts';
import { keptAt } from './storeFirst.ts';

/**
 * The answer to a request of a page: the kept file of this version whatever the query says, which
 * holds a tool's state and is read by the page; else the network's; else a page that says there is none.
 */
export async function answer(request: Request): Promise<Response> {
  const { pathname } = new URL(request.url);
  const kept = (await keptAt(pathname)) ?? (await keptBefore(pathname));
  if (kept) return kept;
  try {
    return await fetch(request);
  } catch (error) {
    if (request.mode !== 'navigate') throw error;
    return withoutNetwork(request.url, pathname);
  }
}

/** A file of an earlier version, for a page that was opened with it. Their names change with their content. */
async function keptBefore(pathname: string): Promise<Response | undefined> {
  return isNamedByContent(pathname) ? caches.match(pathname) : undefined;
}

async function withoutNetwork(url: string, pathname: string): Promise<Response> {
  if (await keptAt(`${pathname}/`)) {
    const there = new URL(url);
    there.pathname = `${pathname}/`;
    return Response.redirect(there.href);
  }
  const language = stored.languages.find(({ folder }) => pathname.startsWith(folder))?.folder;
  const isElsewhere =
    stored.packed.some((start) => pathname.startsWith(start)) ||
    (language !== undefined && !(await keptAt(language)));
  const page = await keptAt(
    isElsewhere ? `${stored.base}offline/` : `${language ?? stored.base}404.html`,
  );
  return page
    ? new Response(page.body, { status: isElsewhere ? 503 : 404, headers: page.headers })
    : Response.error();
}
