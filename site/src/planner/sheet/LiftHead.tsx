interface LiftHeadProps {
  readonly number: number;
  readonly name: string;
  readonly on?: string;
}

/** Number and name of a lift, and what it is done on. */
export function LiftHead({ number, name, on }: LiftHeadProps) {
  return (
    <header class="lift-head">
      <p class="lift-number" aria-hidden="true">
        {number}
      </p>
      <h2>{name}</h2>
      {on !== undefined && <p class="lift-on">{on}</p>}
    </header>
  );
}
