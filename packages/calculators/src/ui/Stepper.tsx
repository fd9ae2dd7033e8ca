import type { ComponentChildren } from 'preact';
import { words } from '../words.ts';

interface StepperProps {
  readonly label: string;
  readonly onStep: (direction: 1 | -1) => void;
  readonly children: ComponentChildren;
}

/** A field between a button for less and a button for more. */
export function Stepper({ label, onStep, children }: StepperProps) {
  return (
    <div class="wl-stepper">
      <button
        type="button"
        class="wl-step"
        aria-label={words.form.less(label)}
        onClick={() => onStep(-1)}
      >
        <span aria-hidden="true">−</span>
      </button>
      {children}
      <button
        type="button"
        class="wl-step"
        aria-label={words.form.more(label)}
        onClick={() => onStep(1)}
      >
        <span aria-hidden="true">+</span>
      </button>
    </div>
  );
}
