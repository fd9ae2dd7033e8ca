import { answer } from './answer.ts';
import { forgetOlder } from './forgetOlder.ts';
import { stored } from './stored.ts';
import { storeFirst, storeLanguage } from './storeFirst.ts';
import { storeRest } from './storeRest.ts';

declare const self: ServiceWorkerGlobalScope;

self.addEventListener('install', (event) => event.waitUntil(storeFirst()));

self.addEventListener('activate', (event) =>
  event.waitUntil(forgetOlder().then(() => self.clients.claim())),
);

// A newer version waits until somebody asks for it: what is being read or done goes on as it is.
self.addEventListener('message', (event) => {
  if (event.data === 'use-now') event.waitUntil(self.skipWaiting());
  if (event.data === 'store-rest') event.waitUntil(storeRest());
  if (typeof event.data?.language === 'string') event.waitUntil(storeLanguage(event.data.language));
});

self.addEventListener('fetch', (event) => {
  const { method, url } = event.request;
  const { origin, pathname } = new URL(url);
  if (method !== 'GET' || origin !== self.location.origin) return;
  if (pathname.startsWith(stored.base)) event.respondWith(answer(event.request));
});
