import { language } from '@windlass/calculators/ui';
import { isTranslated } from './translated.ts';

const base = import.meta.env.BASE_URL.replace(/\/$/, '');
const isEnglish = language.startsWith('en');
/** The base path of the pages in English; another language stands in a folder of its own below it. */
const root = isEnglish ? base : base.slice(0, base.lastIndexOf('/'));

/** The address of a page or file of this site, in this language where it is translated. */
export function href(path: `/${string}`): string {
  return `${isTranslated(path) ? base : root}${path}`;
}

/** The address of the same page in the other language. */
export function hrefInOther(path: string): string {
  const own = path.slice(base.length);
  return isEnglish ? `${root}/de${own}` : `${root}${own}`;
}
