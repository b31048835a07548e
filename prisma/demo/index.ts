export type { DemoAccess, DemoEdition, DemoHome, DemoHouse } from './access';
export { DEMO_ORGANISER, DEMO_TEAMS } from './cast';
export { DEMO_EVENT_NAME, DEMO_ITINERARY, DEMO_TIME_ZONE } from './itinerary';
export { loadDemoEdition, loadDemoHouse } from './load-demo';
