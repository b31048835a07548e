import type { NextConfig } from 'next';

const config: NextConfig = {
  // Every page is a static client shell: the front door serves the files, and a phone can keep them for offline.
  output: 'export',
  trailingSlash: true,
  reactStrictMode: true,
  images: { unoptimized: true },
  // They say whose the bytes of a page are (`npm run bench`) and where a fault lies; a phone never fetches them.
  productionBrowserSourceMaps: true,
  transpilePackages: [
    '@halfshaft/bayplan',
    '@halfshaft/contract',
    '@halfshaft/itinerary',
    '@halfshaft/lifing',
    '@halfshaft/reliability',
    '@halfshaft/worklog',
  ],
  // Types are a step of their own in `npm test`; a start need not repeat it.
  typescript: { ignoreBuildErrors: true },
  // Keeps the build from writing guidance files into the source tree.
  agentRules: false,
};

export default config;
