/** A name that has room for so many characters in a picture, its end left out where it has more. */
export function clippedName(name: string, most: number): string {
  return name.length <= most ? name : `${name.slice(0, most - 1).trimEnd()}…`;
}
