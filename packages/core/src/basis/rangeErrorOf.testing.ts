/**
 * Function and argument that a RangeError names, as `kg: value`: every one of ours says both, then
 * what would be right, then the value. Throws where the call does not end in such an error.
 */
export function rangeErrorOf(call: () => unknown): string {
  try {
    call();
  } catch (error) {
    const named =
      error instanceof RangeError && /^(\w+: .+?) must be .+, got \S/.exec(error.message);
    if (named) return named[1] ?? '';
    throw error;
  }
  throw new Error('the call ends without an error');
}
