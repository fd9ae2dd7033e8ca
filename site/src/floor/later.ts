/** What plans and reckons is as large as the page itself: it is fetched beside it. */
export const fetchDesk = () => import('./desk.ts');

/** What is kept in the browser comes with the reader of kept records. */
export const fetchKeeper = () => import('./keep/openKeeper.ts');
