import { textsOf } from '@windlass/calculators';
import { loadValue } from '@windlass/core/load';
import type { PlannedLift } from '@windlass/core/session';
import { Fragment, h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { toolOf } from '../lib/tools.ts';

/** The bar of a planned lift as the bar tool draws it. Throws for a lift that is not on a bar. */
export function barOf({ lift: { equipment }, work }: PlannedLift): string {
  const { shown, loading } = work.choice;
  if (equipment.kind !== 'barbell' || loading.kind !== 'plates') {
    throw new RangeError(`barOf: ${equipment.name} is not a bar`);
  }
  const tool = toolOf('bar-loading');
  const side = loading.stacks[0]?.plates ?? [];
  const answer = tool.answer(
    textsOf(tool, {
      target: loadValue(shown, 'kg'),
      bar: 'other',
      barWeight: equipment.bar,
      collar: equipment.collar ?? { value: 0, unit: 'kg' },
      plates: side.map(({ weight }) => ({ weight, pieces: 2 })),
    }),
  );
  if (answer.kind !== 'result') throw new RangeError('barOf: the bar tool has no result');
  return renderToString(h(Fragment, null, answer.view()));
}
