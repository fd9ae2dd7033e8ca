import { describe, expect, it } from 'vitest';
import { ownRem } from './ownRem.ts';

describe('ownRem', () => {
  it('measures by its own property', () => {
    expect(ownRem('a{margin:.25rem -1rem;width:clamp(1rem,2rem + 5vw,3rem)}')).toBe(
      'a{margin:calc(.25*var(--rem)) calc(-1*var(--rem));' +
        'width:clamp(calc(1*var(--rem)),calc(2*var(--rem)) + 5vw,calc(3*var(--rem)))}',
    );
  });

  it('has pixels in conditions', () => {
    expect(ownRem('@container (min-width: 52rem){a{gap:1rem}}')).toBe(
      '@container (min-width: 832px){a{gap:calc(1*var(--rem))}}',
    );
  });
});
