/**
 * For an element that the page was served with. Nothing is set: an element that is told so keeps
 * the markup it has.
 */
export const kept = { dangerouslySetInnerHTML: { __html: '' } } as const;
