import type { PlannedLift, SheetLift } from '@windlass/core/session';
import { plan, sheet } from './planPullDay.ts';

/** The first lift of the example, as planned and as on its sheet. Throws where there is none. */
export function firstLift(): { readonly planned: PlannedLift; readonly onSheet: SheetLift } {
  const planned = plan.kind === 'session' ? plan.lifts[0] : undefined;
  const onSheet = sheet.kind === 'sheet' ? sheet.lifts[0] : undefined;
  if (planned?.kind !== 'planned' || onSheet?.kind !== 'planned') {
    throw new RangeError('firstLift: the example has no planned first lift');
  }
  return { planned, onSheet };
}
