import { hydrate } from 'preact';
import { fetchFolded } from './foldedParts.ts';
import { PlannerApp } from './PlannerApp.tsx';
import { startPlan } from './startPlan.ts';
import { fetchReader } from './usePlanner.ts';

const place = document.getElementById('planner');
if (place) {
  hydrate(<PlannerApp {...startPlan(JSON.parse(place.dataset.question ?? ''))} />, place);
  setTimeout(() => Promise.all([fetchReader(), fetchFolded()]), 200);
}
