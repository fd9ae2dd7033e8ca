import { describe, expect, it } from 'vitest';
import { examples } from './examples.ts';
import { addEquipment, equipmentKinds } from './gymEdits.ts';
import { readDraft } from './readDraft.ts';
import { listAt, textAt } from './tree.ts';

describe('addEquipment', () => {
  it.each(equipmentKinds)('adds a %s that a plan file may hold', (kind) => {
    const next = addEquipment(examples['pull-day'], kind, 'New');
    expect(textAt(listAt(next, ['gym', 'equipment']).at(-1) ?? null, ['kind'])).toBe(kind);
    expect(readDraft(next).ok).toBe(true);
  });

  it('gives every piece an id of its own', () => {
    const twice = [1, 2, 3].reduce<ReturnType<typeof addEquipment>>(
      (draft) => addEquipment(draft, 'stack', 'Stack'),
      examples['pull-day'],
    );
    const ids = listAt(twice, ['gym', 'equipment']).map((item) => textAt(item, ['id']));
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.slice(-3)).toEqual(['stack', 'stack-2', 'stack-3']);
  });
});
