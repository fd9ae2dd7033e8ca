import { renderToString } from 'preact-render-to-string';
import { PeopleApp } from './PeopleApp.tsx';

/** The page as it is served: what is kept is only known in the browser. */
export function renderPeople(): string {
  return renderToString(<PeopleApp />);
}
