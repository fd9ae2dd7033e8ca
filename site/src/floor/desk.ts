/** What plans, reckons and is seldom seen: one file, fetched beside the page. */
export { saveTrack } from './count/saveTrack.ts';
export { logOf } from './desk/logOf.ts';
export { nextTry } from './desk/nextTry.ts';
export { openPlan } from './session/openPlan.ts';
export { CarryOnDialog } from './view/CarryOnDialog.tsx';
export { LoadDialog } from './view/LoadDialog.tsx';
export { OverView } from './view/OverView.tsx';
export { PastFailureView } from './view/PastFailureView.tsx';
