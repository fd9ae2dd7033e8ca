const TAG = /<\/?([a-z][^\s/>]*)((?:[^>"']|"[^"]*"|'[^']*')*)>/gi;
const ATTRIBUTE = /([^\s"'>/=]+)(?:\s*=\s*("[^"]*"|'[^']*'|[^\s"'=<>`]+))?/g;
const ACTIVE = /^(?:script|iframe|object|embed|base|meta|link|style|img)$/i;
const SCHEME = /^["']?\s*[a-z][a-z0-9+.-]*:/i;

/** Throws where a piece of markup holds something that would act by itself, or a link that is no web address. */
export function requireInertMarkup(markup: string): void {
  for (const [tag, name = '', attributes = ''] of markup.matchAll(TAG)) {
    const acts = [...attributes.matchAll(ATTRIBUTE)].some(
      ([, attribute = '', value = '']) =>
        /^(?:on.*|style|srcdoc)$/i.test(attribute) ||
        (/^(?:href|src|action)$/i.test(attribute) &&
          SCHEME.test(value) &&
          !/^["']?https:\/\//.test(value)),
    );
    if (acts || ACTIVE.test(name)) throw new Error(`the markup holds ${tag.slice(0, 200)}`);
  }
}
