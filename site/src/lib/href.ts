/** The address of a page of this site, under the base path it is built for. */
export function href(path: `/${string}`): string {
  return `${import.meta.env.BASE_URL.replace(/\/$/, '')}${path}`;
}
