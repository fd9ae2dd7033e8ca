import { readSessionFile } from '@windlass/core/schema';
import { planSession, sessionSheet } from '@windlass/core/session';
import { pullDay } from './pullDay.ts';

const file = readSessionFile(pullDay);
if (!file.ok) throw new Error(file.problems[0]?.message);
export const plan = planSession(file.value);
export const sheet = sessionSheet(plan);
