import { chainWords } from '@windlass/calculators/live';
import { useState } from 'preact/hooks';
import type { Planned } from '../../planner/state/planFrom.ts';
import { type ChainChoice, chainChoices } from '../desk/chainChoices.ts';
import { doneLifts } from '../desk/doneLifts.ts';
import { isSameChain } from '../session/isSameChain.ts';
import { words } from '../words.ts';
import { Dialog } from './Dialog.tsx';
import { useFloor } from './FloorContext.ts';

interface CarryOnDialogProps {
  readonly planned: Planned;
  readonly onClose: () => void;
}

/** The ways in which this set can go on past failure, and why not in the others. */
export function CarryOnDialog({ planned, onClose }: CarryOnDialogProps) {
  const { session, state, say } = useFloor();
  const place = session.steps[state.step]?.lift ?? -1;
  const [help, setHelp] = useState({
    partner: !planned.question.client.alone,
    stops: doneLifts(planned)[place]?.lift.intent.chain?.stops ?? false,
  });
  const choices = chainChoices(planned, session, state, help);
  const offered = choices.filter((choice) => choice.kind === 'offered');
  const refused = choices.filter((choice) => choice.kind === 'refused');
  const chosen = state.chains.get(state.step);
  const choose = (plan: (typeof offered)[number]['plan'] | null) => {
    say({ kind: 'carried-on', step: state.step, plan });
    onClose();
  };
  const { carryOn } = words;
  return (
    <Dialog title={carryOn.title} onClose={onClose}>
      <p>{carryOn.says}</p>
      <label class="floor-switch">
        <input
          type="checkbox"
          checked={help.partner}
          onChange={({ currentTarget }) => setHelp({ ...help, partner: currentTarget.checked })}
        />
        <span>{carryOn.partner}</span>
      </label>
      <label class="floor-switch">
        <input
          type="checkbox"
          checked={help.stops}
          onChange={({ currentTarget }) => setHelp({ ...help, stops: currentTarget.checked })}
        />
        <span>{carryOn.stops}</span>
      </label>
      {choices.length === 0 && <p>{carryOn.unknown}</p>}
      <ul class="floor-menu">
        {offered.map(({ stages, plan, isPlanned }) => (
          <li key={nameOf(stages)}>
            <button
              type="button"
              class="wl-button"
              aria-pressed={chosen !== undefined && isSameChain(plan, chosen)}
              onClick={() => choose(plan)}
            >
              {isPlanned ? carryOn.planned(nameOf(stages)) : nameOf(stages)}
            </button>
          </li>
        ))}
        {chosen && (
          <li>
            <button type="button" class="wl-button" onClick={() => choose(null)}>
              {carryOn.not}
            </button>
          </li>
        )}
      </ul>
      {refused.length > 0 && <Refused refused={refused} />}
    </Dialog>
  );
}

/** Every reason once, with the ways it speaks against. */
function Refused({
  refused,
}: {
  readonly refused: readonly Extract<ChainChoice, { kind: 'refused' }>[];
}) {
  const reasons = new Map(
    refused.flatMap(({ refusals }) =>
      refusals.map(({ code, why, instead }) => [`${code}|${why}`, { why, instead }] as const),
    ),
  );
  return (
    <section class="floor-refused">
      <h3>{words.carryOn.refused}</h3>
      <p>{refused.map(({ stages }) => nameOf(stages)).join('. ')}.</p>
      <ul>
        {[...reasons].map(([key, { why, instead }]) => (
          <li key={key}>
            {why} {instead}
          </li>
        ))}
      </ul>
    </section>
  );
}

function nameOf(stages: ChainChoice['stages']): string {
  return chainWords.chain(stages.slice(1).map(chainWords.stage));
}
