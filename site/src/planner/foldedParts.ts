import { later } from './later/later.tsx';

const folded = () => import('./folded.ts');

export const ClinicianAsk = later(async () => (await folded()).ClinicianAsk);
export const ComplaintsAsk = later(async () => (await folded()).ComplaintsAsk);
export const EquipmentFields = later(async () => (await folded()).EquipmentFields);
export const ExerciseChooser = later(async () => (await folded()).ExerciseChooser);
export const LiftExtras = later(async () => (await folded()).LiftExtras);
export const ListAsk = later(async () => (await folded()).ListAsk);
export const MusclesAsk = later(async () => (await folded()).MusclesAsk);
export const PieceRows = later(async () => (await folded()).PieceRows);
export const PressureAsk = later(async () => (await folded()).PressureAsk);
export const SavedAsk = later(async () => (await import('./saved/SavedAsk.tsx')).SavedAsk);
export const SetAsk = later(async () => (await folded()).SetAsk);
export const Snippet = later(async () => (await folded()).Snippet);

/** Fetches them all, so that they are there when they are opened. */
export const fetchFolded: () => Promise<unknown> = folded;
