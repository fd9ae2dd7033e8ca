import { findExercise } from '@windlass/core/anatomy';
import { kg, lb, parseLoad } from '@windlass/core/load';
import { cueTimeline, formatTempo, parseTempo, secondsPerRep } from '@windlass/core/tempo';
import { pieces } from '../inputs/nasty.ts';
import { anyText, damaged, loadText, tempoText } from '../inputs/texts.ts';
import type { Target } from '../Target.ts';

/** Readers of short texts, and what the ground floors do with what was read. */
export const coreTargets: readonly Target[] = [
  {
    name: 'load text',
    weight: 400,
    mostMs: 100,
    make: (random) =>
      random.pick([anyText, loadText, (r: typeof random) => damaged(loadText(r), r)])(random),
    run: (text: string) =>
      [{}, { locale: 'de' }, { locale: 'en' }, { locale: 'fr-CH' }].map((locale) => {
        const read = parseLoad(text, { unit: 'lb', ...locale });
        // What was read is a load that the rest can count with.
        return read.ok ? [read, (read.value.unit === 'kg' ? kg : lb)(read.value.value)] : read;
      }),
  },
  {
    name: 'tempo text',
    weight: 400,
    mostMs: 100,
    make: (random) =>
      random.pick([anyText, tempoText, (r: typeof random) => damaged(tempoText(r), r)])(random),
    run: (text: string) =>
      (['lower-first', 'lift-first'] as const).map((order) => {
        const read = parseTempo(text, { order });
        if (!read.ok) return read;
        const { tempo } = read.value;
        const written = parseTempo(formatTempo(tempo, { order }), { order });
        if (JSON.stringify(written.ok && written.value.tempo) !== JSON.stringify(tempo)) {
          throw new Error(`${formatTempo(tempo, { order })} is read as another tempo`);
        }
        return [read, secondsPerRep(tempo), cueTimeline(tempo, { reps: 2 })];
      }),
  },
  {
    name: 'name of an exercise',
    weight: 4,
    mostMs: 500,
    make: (random) => damaged(random.pick(['cable-pulldown', 'hip-thrust', ...pieces]), random),
    run: (id: string) => findExercise(id),
  },
];
