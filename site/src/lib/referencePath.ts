/** The address of a page of the reference, from the name of its file: `load/index`, `load/functions/kg`. */
export function referencePath(id: string): `/${string}` {
  return `/developers/reference/${id.replace(/(^|\/)index$/, '$1').replace(/([^/])$/, '$1/')}`;
}
