/** What has the same id, once, where it first stood. */
export function onceById<Item extends { readonly id: string }>(
  items: readonly Item[],
): readonly Item[] {
  return [...new Map(items.map((item) => [item.id, item])).values()];
}
