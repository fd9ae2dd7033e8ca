import { readSaved } from '@windlass/core/schema';
import { expect, it } from 'vitest';
import { boathouseRecords } from './examples.ts';
import { newClient } from './newClient.ts';
import { newGym } from './newGym.ts';

const stamp = { revision: 'r1', at: '2027-03-15T18:30:00Z' };

it('adds three people with their gym and the sets they did, all of which can be read back', () => {
  let number = 0;
  const { clients, gyms, sessions } = boathouseRecords(() => `id-${number++}`, stamp);
  expect([clients.length, gyms.length]).toEqual([3, 1]);
  // Winch hand trained on three days with 7 sets, Helm on two with 5, the new one on none.
  expect(sessions.map(({ sets }) => sets.length)).toEqual([1, 3, 3, 2, 3]);
  for (const record of clients) expect(readSaved('clients', record).ok).toBe(true);
  for (const record of gyms) expect(readSaved('gyms', record).ok).toBe(true);
  for (const record of sessions) expect(readSaved('sessions', record).ok).toBe(true);
});

it('begins a person and a gym with a name as records that can be read back', () => {
  expect(readSaved('clients', newClient('a', 'Lookout', 'b')).ok).toBe(true);
  expect(readSaved('gyms', newGym('b', 'Shed')).ok).toBe(true);
});
