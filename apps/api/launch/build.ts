import { buildWebIfNeeded } from './web-build';

// The pages as `npm start` serves them, without starting anything.
buildWebIfNeeded((sentence) => process.stdout.write(`${sentence}\n`));
