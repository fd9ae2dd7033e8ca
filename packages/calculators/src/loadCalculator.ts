import type { Calculator } from './contract/Calculator.ts';

const loaders: Readonly<Record<string, () => Promise<Calculator>>> = {
  'bar-loading': async () => (await import('./bar-loading/definition.ts')).barLoading,
  calendar: async () => (await import('./calendar/definition.ts')).calendar,
  'compare-equations': async () =>
    (await import('./compare-equations/definition.ts')).compareEquationsCalculator,
  exchange: async () => (await import('./exchange/definition.ts')).exchange,
  'first-load': async () => (await import('./first-load/definition.ts')).firstLoad,
  'gym-loads': async () => (await import('./gym-loads/definition.ts')).gymLoads,
  'load-for-window': async () =>
    (await import('./load-for-window/definition.ts')).loadForWindowCalculator,
  'log-review': async () => (await import('./log-review/definition.ts')).logReview,
  'next-date': async () => (await import('./next-date/definition.ts')).nextDate,
  pair: async () => (await import('./pair/definition.ts')).pair,
  'past-failure': async () => (await import('./past-failure/definition.ts')).pastFailure,
  'strength-from-sets': async () =>
    (await import('./strength-from-sets/definition.ts')).strengthFromSets,
  'tempo-seconds': async () => (await import('./tempo-seconds/definition.ts')).tempoSeconds,
  'warm-up-ramp': async () => (await import('./warm-up-ramp/definition.ts')).warmUpRamp,
};

/** One calculator, fetched on its own, so that a page pays for no other; `undefined` for an unknown id. */
export async function loadCalculator(id: string): Promise<Calculator | undefined> {
  return Object.hasOwn(loaders, id) ? loaders[id]?.() : undefined;
}
