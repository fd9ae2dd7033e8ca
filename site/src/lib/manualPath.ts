/** Where a page of the developers' manual stands; the first one is the manual's own page. */
export function manualPath(id: string): `/${string}` {
  return id === 'getting-started' ? '/developers/' : `/developers/${id}/`;
}
