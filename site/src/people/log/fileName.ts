/** A name as part of a file name: small letters, digits and hyphens, in any alphabet. */
export function fileName(name: string): string {
  const plain = name.normalize('NFKC').toLowerCase();
  return plain.match(/[\p{L}\p{M}\p{N}]+/gu)?.join('-') ?? 'log';
}
