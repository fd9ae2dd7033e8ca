import { words } from '../words.ts';
import { useAsking } from './Asking.ts';

/** Sets the day of the session to the day that the browser has. */
export function TodayButton() {
  const { set } = useAsking();
  const today = () => {
    const now = new Date();
    const two = (number: number) => String(number).padStart(2, '0');
    const day = `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
    set(['intent', 'date'], day);
  };
  return (
    <button type="button" class="wl-button ask-beside" onClick={today}>
      {words.actions.today}
    </button>
  );
}
