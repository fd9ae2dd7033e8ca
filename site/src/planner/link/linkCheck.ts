/**
 * Four bytes that tell a whole link from a damaged one: the 32-bit FNV-1a hash (Fowler, Noll, Vo).
 * A link that lost or changed a character would otherwise now and then be read as another plan.
 */
export function linkCheck(bytes: Uint8Array): Uint8Array {
  let hash = 0x811c9dc5;
  for (const byte of bytes) hash = Math.imul(hash ^ byte, 0x01000193);
  return new Uint8Array([hash >>> 24, hash >>> 16, hash >>> 8, hash]);
}
