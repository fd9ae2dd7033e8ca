import type { SavedGym } from '@windlass/core/schema';
import { newRecord } from '../storage/index.ts';
import { words } from './words.ts';

/** A gym to begin with: one 20 kg bar and a pair of each of its usual plates. */
export function newGym(id: string, name: string): SavedGym {
  const plates = ['20 kg', '15 kg', '10 kg', '5 kg', '2.5 kg', '1.25 kg'].map((weight) => ({
    weight,
    pieces: 2,
  }));
  const bar = { kind: 'barbell', id: 'bar', name: words.gyms.firstBar, bar: '20 kg' };
  return newRecord(id, { gym: { name, plates, equipment: [bar] } });
}
