import { later } from '../planner/later/later.tsx';

export const LogView = later(async () => (await import('./log/LogView.tsx')).LogView);
export const Restore = later(async () => (await import('./restore/Restore.tsx')).Restore);
