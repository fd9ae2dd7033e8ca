// What a user of the packages writes, compiled against the packed types and run on the packed code.
import { calculators, findCalculator } from '@windlass/calculators';
import { lb, toKg } from '@windlass/core';
import { readSessionFile } from '@windlass/core/schema';
import { planSession, printSheet, sessionSheet } from '@windlass/core/session';

const file = readSessionFile({
  client: {
    name: 'Winch hand',
    experience: 'some',
    alone: true,
    health: {},
    sets: [
      {
        date: '2027-03-11',
        exercise: 'cable-pulldown',
        equipment: 'pulldown',
        load: '50 kg',
        reps: 10,
        tempo: '3-0-1-0',
        end: 'failure',
      },
    ],
  },
  gym: {
    name: 'Boathouse',
    plates: [],
    equipment: [
      {
        kind: 'stack',
        id: 'pulldown',
        name: 'Pulldown',
        first: '5 kg',
        rest: [{ weight: '5 kg', pieces: 19 }],
        pulleyRatio: 1,
      },
    ],
  },
  intent: {
    date: '2027-03-15',
    unit: 'kg',
    changeSeconds: 60,
    lifts: [
      {
        exercise: 'cable-pulldown',
        equipment: 'pulldown',
        window: { minReps: 8, maxReps: 12 },
        tempo: '3-0-1-0',
        sets: 1,
        restSeconds: 120,
      },
    ],
  },
});
if (!file.ok) throw new Error(file.problems.map(({ message }) => message).join('\n'));
const sheet = printSheet(sessionSheet(planSession(file.value)));
if (!sheet.includes('on the stack')) throw new Error(sheet);
if (toKg(lb(1)) !== 0.45359237) throw new Error('a pound is 0.45359237 kg');
for (const { id } of calculators) {
  const found = findCalculator(id);
  if (found?.answer({}).kind !== 'result') throw new Error(`${id} has no default result`);
}
