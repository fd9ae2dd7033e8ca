import { Window } from 'happy-dom';

/** What is wrong with the structure of a piece of HTML for people who do not see it. */
export function structureFaults(html: string): readonly string[] {
  const window = new Window();
  const { document } = window;
  document.body.innerHTML = html;
  const all = [...document.querySelectorAll('*')];
  const faults: string[] = [];
  const fault = (what: string, element: { readonly outerHTML: string }) =>
    faults.push(`${what}: ${element.outerHTML.slice(0, 120)}`);

  const ids = all.map(({ id }) => id).filter((id) => id !== '');
  for (const id of new Set(ids.filter((id, at) => ids.indexOf(id) !== at)))
    faults.push(`two #${id}`);

  const isLabelled = (element: (typeof all)[number]) =>
    Boolean(element.getAttribute('aria-label')?.trim()) ||
    Boolean(element.closest('label')?.textContent?.trim()) ||
    (element.id !== '' &&
      [...document.querySelectorAll('label')].some(
        (label) => label.getAttribute('for') === element.id,
      ));

  for (const element of all) {
    const tag = element.tagName.toLowerCase();
    if (['input', 'select', 'textarea'].includes(tag) && !isLabelled(element)) {
      fault('no label', element);
    }
    if (tag === 'button' && !(element.getAttribute('aria-label') ?? element.textContent)?.trim()) {
      fault('no name', element);
    }
    if (
      tag === 'svg' &&
      !(element.getAttribute('role') === 'img' && element.getAttribute('aria-label'))
    ) {
      fault('picture without words', element);
    }
    if (
      tag === 'fieldset' &&
      !element.getAttribute('aria-label') &&
      !element.querySelector('legend')
    ) {
      fault('group without name', element);
    }
    if (tag === 'th' && !element.getAttribute('scope')) fault('header of nothing', element);
    if (/^h[1-6]$/.test(tag) && tag !== 'h2' && tag !== 'h3') fault('heading level', element);
    for (const { name } of [...element.attributes]) {
      if (name === 'style' || name.startsWith('on')) fault(`inline ${name}`, element);
    }
    for (const name of ['aria-describedby', 'for', 'aria-labelledby']) {
      const target = element.getAttribute(name);
      if (target && !ids.includes(target)) fault(`${name} points nowhere`, element);
    }
  }
  for (const needed of ['[role=status]', 'form[aria-label]']) {
    if (!document.querySelector(needed)) faults.push(`no ${needed}`);
  }
  window.close();
  return faults;
}
