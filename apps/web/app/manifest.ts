import type { MetadataRoute } from 'next';

export const dynamic = 'force-static';

/** What a phone needs to put Halfshaft on its home screen. */
export default function manifest(): MetadataRoute.Manifest {
  return {
    id: '/',
    name: 'Halfshaft',
    short_name: 'Halfshaft',
    description: 'What this car needs at this service, who does it, and when the car must leave.',
    start_url: '/home/',
    scope: '/',
    display: 'standalone',
    background_color: '#f4f6f0',
    theme_color: '#20272b',
    icons: [
      { src: '/icon-192.png', sizes: '192x192', type: 'image/png' },
      { src: '/icon-512.png', sizes: '512x512', type: 'image/png' },
      { src: '/icon-512-maskable.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
    ],
  };
}
