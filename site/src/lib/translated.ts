/** The parts of the site that exist in every language; the rest is in English. */
const sections = ['plan', 'tools', 'floor', 'people', 'guides', '404.html'];

/** Whether a page of the site is there in every language. */
export function isTranslated(path: string): boolean {
  const [, section = ''] = path.split('/');
  return section === '' || sections.includes(section);
}
