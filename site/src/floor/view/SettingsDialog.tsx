import { words } from '../words.ts';
import { Dialog } from './Dialog.tsx';
import { useFloor } from './FloorContext.ts';
import { leadIns } from './useCountSettings.ts';

interface SettingsDialogProps {
  readonly onTest: () => void;
  readonly onClose: () => void;
}

const canSpeak = () => 'speechSynthesis' in globalThis;
const canVibrate = () => 'vibrate' in navigator;

/** How sets are counted: by tempo or by hand, and by what it is heard and felt. */
export function SettingsDialog({ onTest, onClose }: SettingsDialogProps) {
  const { settings, set } = useFloor();
  const { settings: said } = words;
  const switches = [
    { key: 'counted', label: said.counted, missing: '' },
    { key: 'sound', label: said.sound, missing: '' },
    { key: 'voice', label: said.voice, missing: canSpeak() ? '' : said.noVoice },
    { key: 'vibration', label: said.vibration, missing: canVibrate() ? '' : said.noVibration },
  ] as const;
  return (
    <Dialog title={said.title} onClose={onClose}>
      {switches.map(({ key, label, missing }) => (
        <label key={key} class="floor-switch">
          <input
            type="checkbox"
            checked={settings[key] && missing === ''}
            disabled={missing !== ''}
            onChange={({ currentTarget }) => set({ [key]: currentTarget.checked })}
          />
          <span>
            {label}
            {missing !== '' && <small>{missing}</small>}
          </span>
        </label>
      ))}
      <fieldset class="floor-lead-in">
        <legend>{said.leadIn}</legend>
        {leadIns.map((seconds) => (
          <label key={seconds} class="floor-switch">
            <input
              type="radio"
              name="lead-in"
              checked={settings.leadInSeconds === seconds}
              onChange={() => set({ leadInSeconds: seconds })}
            />
            <span>{said.seconds(seconds)}</span>
          </label>
        ))}
      </fieldset>
      <button type="button" class="wl-button" onClick={onTest}>
        {said.test}
      </button>
    </Dialog>
  );
}
