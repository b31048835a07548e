// For development only: the build puts the real one in its place. A phone or browser that kept an earlier build would
// go on showing that one, so this worker lets go of it and of itself.
self.addEventListener('install', () => self.skipWaiting());
self.addEventListener('activate', (event) => event.waitUntil(letGo()));

async function letGo() {
  for (const name of await caches.keys()) await caches.delete(name);
  await self.registration.unregister();
}
