export { type RunningServer, startEmbedded } from './embedded-server';
export { findFreePort } from './free-port';
export { type DatabaseUrls, prepareDatabase, urlsOf, withLogin } from './prepare-database';
export { cloneDatabase, startTestServer, type TestDatabase } from './test-databases';
