import { type Browser, chromium } from 'playwright-core';

const ARGUMENTS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

let running: Promise<Browser> | undefined;

/** The one Chromium of this test file, started headless with an empty profile at first use. */
export function startChromium(): Promise<Browser> {
  running ??= chromium.launch({
    executablePath: process.env.CHROMIUM_PATH ?? '/usr/bin/chromium',
    headless: true,
    args: ARGUMENTS,
  });
  return running;
}

/** For `close-chromium.ts`. */
export async function closeChromium(): Promise<void> {
  await (await running)?.close();
  running = undefined;
}
