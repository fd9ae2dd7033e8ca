import type { ExchangeSetting } from '@windlass/core/exchange';
import type { ClientHealth, ClinicianLimits, Limits, TrainingContext } from '@windlass/core/safety';
import { limitsFor } from '@windlass/core/safety';
import { clientOf } from '../shared/healthFields.ts';
import type { ExchangeInput } from './fields.ts';
import { atHandOf } from './places.ts';
import { said } from './words.ts';

/** What was asked of the person, the complaint and the clinician's words in it. */
export function askedOf(input: ExchangeInput): ClientHealth {
  const { complaints, flags } = input;
  const client = clientOf(input);
  const clinician = clinicianOf(input, client.clinician);
  return {
    ...client,
    ...(complaints.length > 0 && {
      complaints: complaints.map((kind) => ({ kind, redFlags: flags })),
    }),
    ...(clinician && { clinician }),
  };
}

function clinicianOf(
  { notAllowed, handOut }: ExchangeInput,
  word: ClinicianLimits | undefined,
): ClinicianLimits | undefined {
  const listed = (notAllowed ?? '').split(',').flatMap((one) => one.trim() || []);
  const hands = handOut === 'both' ? (['left', 'right'] as const) : [handOut];
  const out = hands.flatMap((hand) => (hand === 'none' ? [] : [hand]));
  if (listed.length === 0 && out.length === 0) return word;
  return {
    by: 'physician',
    ...word,
    ...(listed.length > 0 && { notAllowed: listed }),
    ...(out.length > 0 && { handsOutOfUse: out }),
  };
}

/** Who is there, as far as it matters to cautions. */
export function contextOf({ company }: Pick<ExchangeInput, 'company'>): TrainingContext {
  return { alone: company === 'alone' };
}

/** Positions that were ticked, as limits. */
export function positionsOf({ positions }: Pick<ExchangeInput, 'positions'>): Limits['positions'] {
  const reason = { from: 'asked', words: said.leftOutOnWish };
  return positions.map((position) => ({ position, level: 'avoid', reason }));
}

/** Everything that decides what is offered. */
export function settingOf(input: ExchangeInput): ExchangeSetting {
  const limits = limitsFor(askedOf(input), contextOf(input));
  const { place, loads, stations, company, stops, toFailure } = input;
  return {
    limits: { ...limits, positions: [...limits.positions, ...positionsOf(input)] },
    atHand: atHandOf(place, loads, stations),
    alone: company === 'alone',
    stops: stops === 'yes',
    toFailure: toFailure === 'yes',
  };
}
