import { said } from './words.ts';

/** The name of a plan as every calendar file of it carries it: small letters, digits, hyphens. */
export function planIdOf(name: string): string {
  const plain = name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '');
  return plain === '' ? said.planName : plain;
}
