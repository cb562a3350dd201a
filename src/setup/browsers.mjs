// The browser tests need browsers of the system. Found, else installed where that can be done without asking.
import { findProgram, runCommand } from './command.mjs';

/**
 * Chromium for everything a person does; Firefox beside it, to hold the arithmetic of one engine against another's.
 * @typedef {'chromium' | 'firefox'} BrowserName
 * @type {Record<BrowserName, { called: string, programs: string[], aptPackage: string, pathVariable: string }>}
 */
const browsers = {
  chromium: {
    called: 'Chromium',
    programs: ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome'],
    aptPackage: 'chromium',
    pathVariable: 'CHROMIUM_PATH',
  },
  firefox: {
    called: 'Firefox ESR',
    programs: ['firefox-esr', 'firefox'],
    aptPackage: 'firefox-esr',
    pathVariable: 'FIREFOX_PATH',
  },
};

/**
 * @param {BrowserName} name
 * @returns {string | undefined} its path; CHROMIUM_PATH or FIREFOX_PATH goes before all others
 */
export function findBrowser(name) {
  const { programs, pathVariable } = browsers[name];
  const asked = process.env[pathVariable];
  if (asked !== undefined && asked !== '') return asked;
  for (const program of programs) {
    const found = findProgram(program);
    if (found !== undefined) return found;
  }
  return undefined;
}

/** @type {BrowserName[]} */
const names = ['chromium', 'firefox'];

const listMissing = () => names.filter((name) => findBrowser(name) === undefined);

/**
 * One sentence and the one line that helps, for browsers that are not there.
 * @param {BrowserName[]} missing
 */
export function sayHowToInstall(missing) {
  const wanted = missing.map((name) => browsers[name]);
  return [
    `The browser tests need ${wanted.map(({ called }) => called).join(' and ')}. Run this line and call npm test again:`,
    `  sudo apt-get update && sudo apt-get install -y ${wanted.map(({ aptPackage }) => aptPackage).join(' ')}`,
    `or give the path of one in ${wanted.map(({ pathVariable }) => pathVariable).join(' and ')}.`,
  ].join('\n');
}

/** @returns {Promise<boolean>} true when every browser is there, if need be after installing it */
export async function requireBrowsers() {
  const missing = listMissing();
  if (missing.length === 0) return true;
  const root = process.getuid?.() === 0;
  const sudo = !root && findProgram('sudo') !== undefined;
  const before = root ? [] : ['sudo', '-n'];
  if (findProgram('apt-get') !== undefined && (root || sudo)) {
    console.log(
      `Installing ${missing.map((name) => browsers[name].called).join(' and ')} for the browser tests …`,
    );
    const install = ['apt-get', 'install', '-y', '-qq', '--no-install-recommends'];
    const steps = [
      ['apt-get', 'update', '-qq'],
      [
        'env',
        'DEBIAN_FRONTEND=noninteractive',
        ...install,
        ...missing.map((name) => browsers[name].aptPackage),
      ],
    ];
    for (const step of steps) {
      const [name, ...args] = [...before, ...step];
      if (name === undefined || !(await runCommand(name, args))) break;
    }
  }
  const stillMissing = listMissing();
  if (stillMissing.length === 0) return true;
  console.error(sayHowToInstall(stillMissing));
  return false;
}
