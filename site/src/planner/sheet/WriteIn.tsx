import { words } from '../words.ts';

/** On paper only: room to write what was done. */
export function WriteIn() {
  return (
    <p class="write-in" aria-hidden="true">
      {Object.values(words.lift.written).map((name) => (
        <span key={name} class="write-in-box">
          {name}
        </span>
      ))}
    </p>
  );
}
