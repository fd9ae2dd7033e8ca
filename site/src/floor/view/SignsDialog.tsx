import type { StopRule } from '@windlass/core/safety';
import { words } from '../words.ts';
import { Dialog } from './Dialog.tsx';
import { useFloor } from './FloorContext.ts';

interface SignsDialogProps {
  readonly onClose: () => void;
}

/**
 * The signs to stop for: one press on one of them ends what its rule ends and says what to do. A
 * set that is being done has been stopped when this opens.
 */
export function SignsDialog({ onClose }: SignsDialogProps) {
  const { session, state, say } = useFloor();
  const during = session.stopRules.filter(({ when }) => when === 'during');
  const isAsking = state.phase === 'asking';
  const tell = ({ id, ends }: StopRule) => {
    say({ kind: 'sign', rule: id, ends });
    onClose();
  };
  return (
    <Dialog
      title={isAsking ? words.signs.inSet : words.signs.title}
      close={isAsking ? words.signs.none : words.signs.back}
      onClose={onClose}
    >
      <ul class="signs">
        {during.map((rule) => (
          <li key={rule.id}>
            <button type="button" class="wl-button" onClick={() => tell(rule)}>
              {rule.sign}
            </button>
          </li>
        ))}
      </ul>
      {session.cautions.length > 0 && (
        <section class="signs-cautions">
          <h3>{words.signs.cautions}</h3>
          {session.cautions.map(({ id, level, what, instead, ask }) => (
            <p key={id}>
              <strong>
                {words.levels[level]}: {what}
              </strong>{' '}
              {instead}
              {ask.length > 0 &&
                ` ${words.signs.ask(ask.map((one) => words.advisers[one]).join(', '))}`}
            </p>
          ))}
        </section>
      )}
    </Dialog>
  );
}

/** What to do about the signs that were told, the latest first; it stays until the session goes on. */
export function ToldSigns() {
  const { session, state } = useFloor();
  const told = state.signs.at(-1);
  const rule = told && session.stopRules.find(({ id }) => id === told.rule);
  const isOfNow = state.endedBySign || (told !== undefined && told.step === state.last);
  if (!rule || !isOfNow) return null;
  return (
    <div class="told-sign" role="alert">
      <p>
        <strong>{words.signs.told(rule.sign)}</strong> {rule.action}
      </p>
      {rule.ask.length > 0 && (
        <p>{words.signs.ask(rule.ask.map((one) => words.advisers[one]).join(', '))}</p>
      )}
      {rule.ends === 'the-session' && <p>{words.signs.over}</p>}
      {rule.ends === 'the-exercise' && <p>{words.signs.exerciseOver}</p>}
    </div>
  );
}
