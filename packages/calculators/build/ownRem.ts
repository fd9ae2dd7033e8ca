/** What `rem` is in a browser that nobody has set otherwise. */
const USUAL_PX = 16;

/**
 * A style sheet that measures by `--rem` instead of `rem`, so that the font size of the page around
 * it does not count. The conditions of queries, which read no property, are in pixels.
 */
export function ownRem(css: string): string {
  return css
    .replace(/@(?:container|media)[^{]*/g, (condition) =>
      condition.replace(/([\d.]+)rem\b/g, (_, count) => `${Number(count) * USUAL_PX}px`),
    )
    .replace(/(?<![\w.])(-?[\d.]+)rem\b/g, 'calc($1*var(--rem))');
}
