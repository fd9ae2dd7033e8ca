import { useMemo } from 'preact/hooks';
import { useAsking } from './asks/Asking.ts';
import { LiftAsk } from './asks/LiftAsk.tsx';
import { Leaf } from './Leaf.tsx';
import { LiftResult } from './sheet/LiftResult.tsx';
import { rulerEnd } from './sheet/rulerEnd.ts';
import { placeInPlan } from './state/placeInPlan.ts';
import type { Planned } from './state/planFrom.ts';
import { textAt } from './state/tree.ts';
import { words } from './words.ts';

interface LiftLeafProps {
  readonly place: number;
  readonly shown: Planned;
}

/** One lift: what became of it, and what is wanted of it. */
export function LiftLeaf({ place, shown }: LiftLeafProps) {
  const { draft } = useAsking();
  const inPlan = placeInPlan(draft, shown.draft, place);
  const exercise = textAt(draft, ['intent', 'lifts', place, 'exercise']);
  const result = useMemo(
    () => (
      <LiftResult
        shown={shown}
        place={inPlan}
        number={place + 1}
        exercise={exercise}
        most={rulerEnd(shown.plan)}
      />
    ),
    [shown, inPlan, place, exercise],
  );
  return (
    <Leaf
      name={words.lift.number(place + 1)}
      button={words.actions.change}
      brief={briefOf(shown, inPlan)}
      sheet={result}
      asks={<LiftAsk place={place} />}
    />
  );
}

function briefOf({ sheet }: Planned, place: number): string {
  const lift = sheet.kind === 'sheet' ? sheet.lifts[place] : undefined;
  if (lift?.kind === 'planned') return `${lift.load.words}: ${lift.load.loading}`;
  if (lift?.kind === 'finding') return `${words.lift.start} ${lift.firstLoad.words}`;
  return lift ? words.lift.leftOut : words.lift.noLoad;
}
