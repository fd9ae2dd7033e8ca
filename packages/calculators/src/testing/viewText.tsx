import type { ComponentChildren } from 'preact';
import { renderToString } from 'preact-render-to-string';

/** What a view says, without its tags. */
export function viewText(view: ComponentChildren): string {
  return renderToString(<div>{view}</div>)
    .replace(/<[^>]*>/g, ' ')
    .replace(/[\s\u00a0]+/g, ' ');
}
