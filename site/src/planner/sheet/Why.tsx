import { useId, useState } from 'preact/hooks';
import { words } from '../words.ts';

interface WhyProps {
  readonly load: string;
  readonly reasons: readonly string[];
}

/** Why this load: open where there is room, behind its name on a phone. */
export function Why({ load, reasons }: WhyProps) {
  const [isOpen, setOpen] = useState(false);
  const id = useId();
  return (
    <div class="why">
      <h3>
        <span class="why-name">{words.lift.why(load)}</span>
        <button
          type="button"
          class="why-button"
          aria-expanded={isOpen}
          aria-controls={id}
          onClick={() => setOpen(!isOpen)}
        >
          {words.lift.why(load)}
        </button>
      </h3>
      <ul id={id} data-open={isOpen ? 'true' : undefined}>
        {reasons.map((reason) => (
          <li key={reason}>{reason}</li>
        ))}
      </ul>
    </div>
  );
}
