import { spawnSync } from 'node:child_process';
import { type Browser, chromium } from 'playwright-core';

const names = ['chromium', 'chromium-browser', 'google-chrome'];

/** The command of a browser that is installed. */
function findChromium(): string {
  const found = names.find((name) => spawnSync(name, ['--version']).status === 0);
  if (found !== undefined) return spawnSync('which', [found], { encoding: 'utf8' }).stdout.trim();
  throw new Error(
    `npm run test:browser needs Chromium and found none of ${names.join(', ')}. Install it, on Debian by: apt-get install chromium`,
  );
}

/** Says so before anything is built, where there is no browser. */
export default function setup(): void {
  findChromium();
}

const flags = [
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** A browser without a window, with a profile of its own. Root, as in a container, has no sandbox. */
export const launch = (): Promise<Browser> =>
  chromium.launch({ executablePath: findChromium(), args: flags, chromiumSandbox: process.getuid?.() !== 0 });
