import { today } from '../state/today.ts';
import { words } from '../words.ts';
import { useAsking } from './Asking.ts';

/** Sets the day of the session to the day that the browser has. */
export function TodayButton() {
  const { set } = useAsking();
  return (
    <button
      type="button"
      class="wl-button ask-beside"
      onClick={() => set(['intent', 'date'], today())}
    >
      {words.actions.today}
    </button>
  );
}
