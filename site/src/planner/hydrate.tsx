import { hydrate } from 'preact';
import { fetchFolded } from './foldedParts.ts';
import { PlannerApp } from './PlannerApp.tsx';
import { fetchPlanning } from './usePlanner.ts';

const place = document.getElementById('planner');
if (place) {
  hydrate(<PlannerApp start={JSON.parse(place.dataset.start ?? '')} />, place);
  const signs = ['pointerover', 'focusin', 'keydown'] as const;
  const used = () => {
    for (const sign of signs) place.removeEventListener(sign, used);
    void Promise.allSettled([fetchPlanning(), fetchFolded()]);
  };
  for (const sign of signs) place.addEventListener(sign, used);
}
