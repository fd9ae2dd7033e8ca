import type { ComponentChildren } from 'preact';

interface PartProps {
  readonly name: string;
  readonly children: ComponentChildren;
}

/** A part of the page: its name in the margin on wide screens and above it on narrow ones. */
export function Part({ name, children }: PartProps) {
  return (
    <section class="part">
      <h2>{name}</h2>
      <div class="part-body">{children}</div>
    </section>
  );
}
