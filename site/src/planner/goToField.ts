/**
 * Goes to the field of an id, or to the first one inside what the id names, opening what it is
 * folded away in.
 */
export function goToField(id: string): void {
  const fields = 'input, select, textarea, button';
  const field = [...document.querySelectorAll<HTMLElement>(fields)].find(
    (one) => one.id === id || one.id.startsWith(`${id}-`),
  );
  if (!field) return;
  for (let fold = field.closest('details'); fold; fold = closestAbove(fold)) fold.open = true;
  const asks = field.closest<HTMLElement>('.leaf-asks');
  if (asks && !asks.checkVisibility()) {
    document.querySelector<HTMLElement>(`[aria-controls="${asks.id}"]`)?.click();
  }
  requestAnimationFrame(() => {
    field.scrollIntoView({ block: 'center' });
    field.focus();
  });
}

function closestAbove(fold: Element): HTMLDetailsElement | null {
  return fold.parentElement?.closest('details') ?? null;
}
