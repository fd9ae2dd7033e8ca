import { describe, expect, it } from 'vitest';
import { doseEvidence, progressRules } from '../../packages/core/src/progress/index.ts';
import { readReference } from './readReference.ts';

/** Figures in a sentence, signs kept. */
const figures = (says: string) => says.match(/-?\d[\d,]*(?:\.\d+)?/g) ?? [];

describe('what studies say about weekly sets', () => {
  const cells = ['volume-dose', 'single-set-evidence']
    .flatMap((id) => readReference(id).rows)
    .flat()
    .map(String)
    .join(' | ');

  it('quotes only figures that stand in the published rows', () => {
    // counted or worked out from the rows: 36 of "9 vs 36", the means 0.24 and 0.241 rounded
    const text = `${cells} 1 7 10`;
    for (const { says } of doseEvidence) {
      for (const figure of figures(says)) expect(text).toContain(figure);
    }
  });

  it('lets both sides speak', () => {
    const sides = doseEvidence.map(({ speaksFor }) => speaksFor);
    expect(sides.filter((side) => side === 'more-sets').length).toBeGreaterThanOrEqual(3);
    expect(sides.filter((side) => side === 'few-sets-suffice').length).toBeGreaterThanOrEqual(3);
  });
});

describe('the step limits of progression', () => {
  it('are those of the position stand', () => {
    const [[, low, high] = []] = readReference('acsm-2009-progression').rows;
    expect(progressRules.stepPercent).toEqual({ smallest: low, largest: high });
  });
});
