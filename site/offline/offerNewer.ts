import { words } from './words.ts';

/**
 * Shows that a newer version is there, and changes to it only when it is asked for. Where another
 * page asked for it, this one goes on as it is until its own button is pressed.
 */
export function offerNewer(bar: HTMLElement, registration: ServiceWorkerRegistration): void {
  const { serviceWorker } = navigator;
  let hadVersion = serviceWorker.controller !== null;
  const offer = () => {
    if (registration.waiting && hadVersion) show(bar, useWaiting);
  };
  const useWaiting = () => {
    if (!registration.waiting) return location.reload();
    serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true });
    registration.waiting.postMessage('use-now');
    // What the version before is still fetching is finished first.
    bar.textContent = words.changing;
  };

  registration.addEventListener('updatefound', () => {
    registration.installing?.addEventListener('statechange', offer);
  });
  serviceWorker.addEventListener('controllerchange', () => {
    if (hadVersion) show(bar, useWaiting);
    hadVersion = true;
  });
  offer();
}

function show(bar: HTMLElement, onUse: () => void): void {
  if (bar.textContent !== '') return;
  const says = document.createElement('p');
  says.textContent = words.newer;
  bar.append(
    says,
    button(words.useNow, onUse),
    button(words.later, () => bar.replaceChildren()),
  );
}

function button(label: string, onPress: () => void): HTMLButtonElement {
  const made = document.createElement('button');
  made.type = 'button';
  made.textContent = label;
  made.addEventListener('click', onPress);
  return made;
}
