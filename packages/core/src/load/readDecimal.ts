import { bad, good, type Outcome } from '../basis/index.ts';

/**
 * Reads an unsigned number with a decimal comma or point as a plain decimal (`62.5`).
 * Marks between thousands are never guessed: what could be read in two ways is a problem.
 *
 * @param mark the decimal mark known to be in use; without it, neither comma nor point is trusted
 * where three digits follow.
 */
export function readDecimal(text: string, mark?: string): Outcome<string> {
  if (/^\d+$/.test(text)) return good(text);
  const single = /^(\d*)([.,])(\d*)$/.exec(text);
  const [, whole = '', usedMark = '', decimals = ''] = single ?? [];
  if (single !== null && whole + decimals !== '') {
    const couldBeThousands = /^[1-9]\d{0,2}$/.test(whole) && decimals.length === 3;
    return couldBeThousands && usedMark !== mark
      ? ambiguous(text, whole, usedMark, decimals)
      : good(`${whole || '0'}.${decimals || '0'}`);
  }
  const grouped = /^(\d{1,3})([.,'’\s])(\d{3}(?:\2\d{3})*)((?:(?!\2)[.,]\d+)?)$/.exec(text);
  if (grouped !== null) return thousandsMarks(text, grouped);
  return bad({
    code: 'load.not-a-load',
    path: [],
    message: 'Write the load as one number, for example 62.5 or 62,5.',
    received: text,
  });
}

function ambiguous(text: string, whole: string, usedMark: string, decimals: string) {
  const thousands = whole + decimals;
  const decimal = `${text}0`;
  return bad({
    code: 'load.ambiguous-mark',
    path: [],
    message: `${text} can mean ${thousands} or ${whole} and a fraction. Write ${thousands} for the first, ${decimal} for the second.`,
    params: { text, thousands, decimal, mark: usedMark },
    received: text,
  });
}

function thousandsMarks(text: string, [, first, , rest = '', decimals = '']: readonly string[]) {
  const suggestion = `${first}${rest.replace(/\D/g, '')}${decimals}`;
  return bad({
    code: 'load.thousands-mark',
    path: [],
    message: `Write the load without marks between thousands: ${suggestion}.`,
    params: { text, suggestion },
    received: text,
  });
}
