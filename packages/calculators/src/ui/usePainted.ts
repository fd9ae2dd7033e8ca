import { useEffect, useState } from 'preact/hooks';

/**
 * A value as it was when the page was last painted. What takes longer than a frame is worked out
 * from it, so that what was entered is seen first.
 */
export function usePainted<T>(value: T): T {
  const [painted, setPainted] = useState(value);
  useEffect(() => setPainted(() => value), [value]);
  return painted;
}
