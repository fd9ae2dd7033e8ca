interface Refusal {
  readonly code: string;
  readonly why: string;
  readonly instead: string;
}

/** Why something is not offered, each reason with what to do instead. */
export function RefusalReasons({ refusals }: { readonly refusals: readonly Refusal[] }) {
  return (
    <ul class="wl-sources">
      {refusals.map(({ code, why, instead }, index) => (
        <li key={`${code} ${index}`}>
          {why} <strong>{instead}</strong>
        </li>
      ))}
    </ul>
  );
}
