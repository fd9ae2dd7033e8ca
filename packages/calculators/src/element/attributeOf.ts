/**
 * The attribute of `<windlass-calculator>` that sets a field: its name in lower case, with hyphens.
 *
 * @example
 * ```ts
 * import { attributeOf } from '@windlass/calculators';
 *
 * attributeOf('stackPlates'); // 'stack-plates'
 * ```
 */
export function attributeOf(field: string): string {
  return field.replace(/[A-Z]/g, (capital) => `-${capital.toLowerCase()}`);
}
