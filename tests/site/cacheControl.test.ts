import { describe, expect, it } from 'vitest';
import { cacheControl } from '../../site/offline/cacheControl.ts';

describe('cacheControl', () => {
  it('keeps what is named by its content, and asks again for pages and the worker', () => {
    expect(cacheControl('/assets/Page.CZx0sNFx.css')).toContain('immutable');
    expect(cacheControl('/lift/assets/Page.CZx0sNFx.css')).toContain('immutable');
    for (const path of ['/', '/tools/pair/', '/worker.js', '/manifest.webmanifest'])
      expect(cacheControl(path)).toBe('no-cache');
  });
});
