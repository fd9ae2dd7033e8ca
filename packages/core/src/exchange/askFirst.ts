import { type Exercise, jointsLoaded } from '../anatomy/index.ts';
import type { LimitReason } from '../safety/index.ts';
import type { AskFirst, ExchangeSetting } from './Exchange.ts';
import type { ClinicianFilter } from './readClinicianList.ts';
import { unreadWords } from './unreadWords.ts';

/** What has to be asked before anything is exchanged, or nothing. */
export function askFirst(
  { limits }: ExchangeSetting,
  filter: ClinicianFilter,
  exercise?: Exercise,
): AskFirst | undefined {
  const reasons: LimitReason[] = [];
  if (limits.training.kind !== 'allowed') reasons.push(...limits.training.reasons);
  if (exercise) {
    const joints = jointsLoaded(exercise);
    const paused = limits.joints.filter(({ joint }) => joints.includes(joint));
    reasons.push(...paused.map(({ reason }) => reason));
  }
  for (const words of filter.unread) {
    reasons.push({ from: 'clinician', words: unreadWords(words) });
  }
  if (!reasons.length) return undefined;
  return { kind: 'ask-first', reasons, ask: ['physician', 'physiotherapist'] };
}
