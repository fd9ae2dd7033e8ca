/**
 * The parts of a written tempo. Dash of any length, colon, slash and space always separate; point
 * and comma separate only when nothing else does and there are several of one of them (`3.0.1.0`),
 * otherwise they are decimal marks. Without separators every character is a part.
 */
export function splitTempo(text: string): readonly string[] {
  const trimmed = text.trim();
  if (trimmed === '') return [];
  if (/[\s\-‐-―−:/]/.test(trimmed)) return trimmed.split(/\s*[-‐-―−:/]\s*|[.,]?\s+/);
  for (const mark of ['.', ',']) {
    const pieces = trimmed.split(mark);
    if (pieces.length > 2) return pieces;
  }
  return /[.,]/.test(trimmed) ? [trimmed] : [...trimmed];
}
