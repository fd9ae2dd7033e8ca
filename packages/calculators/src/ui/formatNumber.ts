import { language } from '@windlass/core/basis';

const formats = new Map<number, Intl.NumberFormat>();

/** A number for people: at most `decimals` decimals, no trailing zeros, a true minus sign. */
export function formatNumber(value: number, decimals = 2): string {
  const rounded = Number(value.toFixed(decimals));
  return formatFor(decimals)
    .format(rounded === 0 ? 0 : rounded)
    .replace('-', '\u2212');
}

function formatFor(decimals: number): Intl.NumberFormat {
  const known = formats.get(decimals);
  if (known) return known;
  const made = new Intl.NumberFormat(language, {
    maximumFractionDigits: decimals,
    useGrouping: false,
  });
  formats.set(decimals, made);
  return made;
}
