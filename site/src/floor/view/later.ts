import { later } from '../../planner/later/later.tsx';
import { fetchDesk } from '../later.ts';

export const CarryOnDialog = later(async () => (await fetchDesk()).CarryOnDialog);
export const LoadDialog = later(async () => (await fetchDesk()).LoadDialog);
export const OverView = later(async () => (await fetchDesk()).OverView);
export const PastFailureView = later(async () => (await fetchDesk()).PastFailureView);
