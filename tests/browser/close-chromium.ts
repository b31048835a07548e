import { afterAll } from 'vitest';
import { closeChromium } from './start-chromium';

// Runs before each test file, though the files share their modules: a Chromium ends with the file that started it.
afterAll(closeChromium);
