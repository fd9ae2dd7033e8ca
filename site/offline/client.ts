import { offerNewer } from './offerNewer.ts';

/** Two network answers are as good as one within this time. */
const ASK_AGAIN_AFTER_MS = 60 * 60 * 1000;
/** The rest is fetched when what is on the screen has come. */
const REST_AFTER_MS = 5000;

const place = document.getElementById('newer');
const worker = place?.dataset.worker;

if (import.meta.env.PROD && place && worker && 'serviceWorker' in navigator) {
  if (document.readyState === 'complete') void start(place, worker);
  else addEventListener('load', () => void start(place, worker), { once: true });
}

/** Has the site kept on the device, and offers a newer version when there is one. */
async function start(bar: HTMLElement, address: string): Promise<void> {
  const registration = await navigator.serviceWorker.register(address, { updateViaCache: 'none' });
  offerNewer(bar, registration);
  askNowAndThen(registration);
  const { active } = await navigator.serviceWorker.ready;
  active?.postMessage({ language: bar.dataset.folder });
  if (!savesData()) setTimeout(() => active?.postMessage('store-rest'), REST_AFTER_MS);
}

/** A page that stays open for days asks, too, when somebody comes back to it. */
function askNowAndThen(registration: ServiceWorkerRegistration): void {
  let asked = Date.now();
  document.addEventListener('visibilitychange', () => {
    if (document.hidden || Date.now() - asked < ASK_AGAIN_AFTER_MS) return;
    asked = Date.now();
    registration.update().catch(() => {});
  });
}

function savesData(): boolean {
  const { connection } = navigator as { connection?: { saveData?: boolean } };
  return connection?.saveData === true;
}
