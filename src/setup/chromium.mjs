// The browser tests need a Chromium of the system. Found, else installed where that can be done without asking.
import { findProgram, runCommand } from './command.mjs';

const names = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome'];

/** @returns {string | undefined} its path; CHROMIUM_PATH goes before all others */
export function findChromium() {
  const asked = process.env.CHROMIUM_PATH;
  if (asked !== undefined && asked !== '') return asked;
  for (const name of names) {
    const found = findProgram(name);
    if (found !== undefined) return found;
  }
  return undefined;
}

/** @returns {Promise<boolean>} true when a Chromium is there, if need be after installing it */
export async function requireChromium() {
  if (findChromium() !== undefined) return true;
  const root = process.getuid?.() === 0;
  const sudo = !root && findProgram('sudo') !== undefined;
  const before = root ? [] : ['sudo', '-n'];
  if (findProgram('apt-get') !== undefined && (root || sudo)) {
    console.log('Installing Chromium for the browser tests …');
    const steps = [
      ['apt-get', 'update', '-qq'],
      [
        'env',
        'DEBIAN_FRONTEND=noninteractive',
        'apt-get',
        'install',
        '-y',
        '-qq',
        '--no-install-recommends',
        'chromium',
      ],
    ];
    for (const step of steps) {
      const [name, ...args] = [...before, ...step];
      if (name === undefined || !(await runCommand(name, args))) break;
    }
  }
  if (findChromium() !== undefined) return true;
  console.error('The browser tests need Chromium. Run this line and call npm test again:');
  console.error('  sudo apt-get update && sudo apt-get install -y chromium');
  console.error('or give the path of one in CHROMIUM_PATH.');
  return false;
}
