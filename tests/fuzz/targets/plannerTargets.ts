import { printSheet, rememberLifts } from '@windlass/core/session';
import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { decodePlan } from '../../../site/src/planner/link/decodePlan.ts';
import { encodePlan } from '../../../site/src/planner/link/encodePlan.ts';
import { PlannerApp } from '../../../site/src/planner/PlannerApp.tsx';
import { examples, firstExample } from '../../../site/src/planner/state/examples.ts';
import { openFile } from '../../../site/src/planner/state/openFile.ts';
import { planFrom } from '../../../site/src/planner/state/planFrom.ts';
import { readDraft } from '../../../site/src/planner/state/readDraft.ts';
import type { Json } from '../../../site/src/planner/state/tree.ts';
import { injections } from '../inputs/nasty.ts';
import type { Random } from '../inputs/Random.ts';
import { anyText, damaged } from '../inputs/texts.ts';
import { damagedJson } from '../inputs/trees.ts';
import { requireInertMarkup } from '../requireInertMarkup.ts';
import type { Target } from '../Target.ts';

const plans: readonly Json[] = Object.values(examples);
const links = await Promise.all(
  plans.map((plan) => encodePlan({ ...(plan as object), note: 'changed' })),
);

/** What the planner opens: links, files, and drafts that somebody is still typing in. */
export const plannerTargets: readonly Target[] = [
  {
    name: 'link to a plan',
    weight: 20,
    mostMs: 1000,
    make: (random) =>
      random.pick([
        anyText,
        (r: Random) => `1.${anyText(r)}`,
        (r: Random) => damaged(r.pick(links), r),
      ])(random),
    run: (fragment: string) => decodePlan(fragment),
  },
  {
    name: 'file for the planner',
    weight: 40,
    mostMs: 500,
    make: (random) => {
      const text = JSON.stringify(tree(random));
      return random.oneIn(3) ? damaged(text, random) : text;
    },
    run: (text: string) => openFile(text, firstExample),
  },
  {
    name: 'draft of a plan',
    weight: 2,
    mostMs: 5000,
    make: (random) => tree(random),
    run: async (draft: Json) => {
      const link = await decodePlan(await encodePlan(draft));
      const read = readDraft(draft);
      if (!read.ok) return [link, read];
      const start = planFrom(draft, read.value, rememberLifts());
      const markup = renderToString(h(PlannerApp, { start }));
      requireInertMarkup(markup);
      return [link, start.plan, start.sheet, printSheet(start.sheet), markup];
    },
  },
];

/** A plan that a file can hold, with hostile names in it. */
function tree(random: Random): Json {
  const text = damagedJson(random.pick(plans), random);
  const name = JSON.stringify(random.pick(injections)).slice(1, -1);
  return JSON.parse(text.replaceAll('Winch hand', () => name) || 'null');
}
