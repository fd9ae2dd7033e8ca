import { words } from './words.ts';

/** A page that the text leads to. */
export interface Lead {
  readonly name: string;
  /** Its whole address. */
  readonly url: string;
  readonly says: string;
}

/** The lists of pages that the text leads to. */
export type Leads = Readonly<Record<Exclude<keyof typeof words.parts, 'rules'>, readonly Lead[]>>;

/**
 * The site for language models, as `llms.txt` is written: a title, a sentence, rules, and lists of
 * pages, each with what it answers.
 */
export function llmsText(leads: Leads): string {
  const { rules, ...parts } = words.parts;
  const lists = (Object.keys(parts) as (keyof Leads)[]).map(
    (part) => `## ${parts[part]}\n\n${leads[part].map(line).join('\n')}`,
  );
  const opening = [`# ${words.title}`, `> ${words.says}`, `## ${rules}`];
  const bullets = words.rules.map((rule) => `- ${rule}`).join('\n');
  return `${[...opening, bullets, ...lists].join('\n\n')}\n`;
}

function line({ name, url, says }: Lead): string {
  return `- [${name}](${url}): ${says}`;
}
