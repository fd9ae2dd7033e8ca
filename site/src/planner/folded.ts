/** What is behind folds and buttons: one file, fetched when the page is idle or one is opened. */
export { ClinicianAsk } from './asks/ClinicianAsk.tsx';
export { ComplaintsAsk } from './asks/ComplaintsAsk.tsx';
export { EquipmentFields } from './asks/EquipmentFields.tsx';
export { ExerciseChooser } from './asks/ExerciseChooser.tsx';
export { ListAsk } from './asks/fields/ListAsk.tsx';
export { LiftExtras } from './asks/LiftExtras.tsx';
export { MusclesAsk } from './asks/MusclesAsk.tsx';
export { PieceRows } from './asks/PieceRows.tsx';
export { PressureAsk } from './asks/PressureAsk.tsx';
export { SetAsk } from './asks/SetAsk.tsx';
export { Snippet } from './Snippet.tsx';
