import { fieldText } from '../fields/fieldText.ts';
import { barTexts } from './barTexts.ts';
import { type GearInput, gearFields } from './gearFields.ts';

const STACK = ['stackFirst', 'stackStep', 'stackPlates', 'pulley', 'addOn'] as const;

/** The equipment as texts, for a link to another calculator that has the same fields. */
export function gearTexts(input: GearInput): Readonly<Record<string, string>> {
  const { gear } = input;
  if (gear === 'bar') return { gear, ...barTexts(input) };
  const names = gear === 'dumbbells' ? (['dumbbells'] as const) : STACK;
  return {
    gear,
    ...Object.fromEntries(names.map((name) => [name, fieldText(gearFields[name], input[name])])),
  };
}
