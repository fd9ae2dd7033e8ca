import css from '../ui/element.css?inline';

/** One style sheet for all calculators of a page. */
export const sheet: CSSStyleSheet = new CSSStyleSheet();
sheet.replaceSync(css);

const unit = '--rem';
/** What a font size is measured by: fixed where it is set, whatever the size inside. */
try {
  CSS.registerProperty({
    name: unit,
    syntax: '<length>',
    inherits: true,
    initialValue: '16px',
  });
} catch {
  // The page, or another build of the element, has registered it before.
}
