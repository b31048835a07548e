export { expectAccessible } from './expect-accessible';
export { type OpenPage, openPage, type PageOptions } from './open-page';
export { runAxe } from './run-axe';
export { screenshot } from './screenshot';
export { startChromium } from './start-chromium';
