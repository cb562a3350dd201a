import { mkdtempSync, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import type { Server } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { sayHowToInstall } from '../../src/setup/browsers.mjs';
import { installMatches } from '../../src/setup/install.mjs';
import { refuseOldNode } from '../../src/setup/node.mjs';
import { readPort, serveFolder } from '../../src/setup/serve.mjs';
import { tallyReport } from '../../src/setup/tally.mjs';

describe('the Node that starts it', () => {
  it('is refused in one sentence when it is older than 20, and let through from there on', () => {
    expect(refuseOldNode('18.20.4')).toMatch(/needs Node 20 .*this is Node 18\.20\.4\./);
    expect(refuseOldNode('20.0.0')).toBeUndefined();
    expect(refuseOldNode('24.1.0')).toBeUndefined();
  });
});

describe('the kit in place', () => {
  const wanted = {
    packages: {
      '': { version: '0.1.0' },
      'node_modules/three': { version: '1.0.0' },
      'node_modules/for-another-platform': { version: '2.0.0', optional: true },
    },
  };

  it('is taken as it lies when every package stands at the version wanted', () => {
    expect(installMatches(wanted, { packages: { 'node_modules/three': { version: '1.0.0' } } })).toBe(true);
  });

  it('is unpacked anew when it is missing, incomplete, of another version, or has something extra', () => {
    const three = { 'node_modules/three': { version: '1.0.0' } };
    expect(installMatches(wanted, undefined)).toBe(false);
    expect(installMatches(wanted, { packages: {} })).toBe(false);
    expect(installMatches(wanted, { packages: { 'node_modules/three': { version: '1.0.1' } } })).toBe(false);
    expect(installMatches(wanted, { packages: { ...three, 'node_modules/old': { version: '1.0.0' } } })).toBe(
      false,
    );
  });
});

describe('the browsers', () => {
  it('that are missing are asked for in one line that can be run', () => {
    expect(sayHowToInstall(['firefox'])).toMatch(
      /need Firefox ESR\..*\n.*apt-get install -y firefox-esr\n.*FIREFOX_PATH/,
    );
    expect(sayHowToInstall(['chromium', 'firefox'])).toContain('install -y chromium firefox-esr\n');
  });
});

describe('the count of tests', () => {
  const good = { status: 'passed', assertionResults: [{}] };
  const report = {
    success: true,
    numPassedTests: 7,
    numFailedTests: 0,
    numPendingTests: 0,
    numTodoTests: 0,
    testResults: [good],
  };

  it('is what the runner reports', () => {
    expect(tallyReport(report)).toEqual({ passed: 7, failed: 0 });
    expect(tallyReport({ ...report, success: false, numFailedTests: 2 })).toEqual({ passed: 7, failed: 2 });
  });

  it('counts as failed a file that fell over, a test passed over, and a run that failed for no test', () => {
    const fallen = { status: 'failed', assertionResults: [] };
    expect(tallyReport({ ...report, success: false, testResults: [good, fallen] }).failed).toBe(1);
    expect(tallyReport({ ...report, numPendingTests: 1 }).failed).toBe(1);
    expect(tallyReport({ ...report, success: false }).failed).toBe(1);
  });
});

describe('the page server', () => {
  let folder = '';
  let server: Server;
  let address = '';

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'stillmain-served-'));
    mkdirSync(join(folder, 'open', 'a b'), { recursive: true });
    writeFileSync(join(folder, 'secret.txt'), 'not for the page');
    writeFileSync(join(folder, 'open', 'index.html'), '<p>yard</p>');
    writeFileSync(join(folder, 'open', 'a b', 'mesh.wasm'), 'x');
    writeFileSync(join(folder, 'open', 'app.js'), 'export {};');
    server = await serveFolder(join(folder, 'open'), 0);
    address = `http://127.0.0.1:${readPort(server)}`;
  });
  afterAll(async () => {
    server.closeAllConnections();
    await new Promise((resolve) => server.close(resolve));
    rmSync(folder, { recursive: true, force: true });
  });

  it.each([
    ['/', 'text/html; charset=utf-8'],
    ['/?a=1', 'text/html; charset=utf-8'],
    ['/app.js', 'text/javascript; charset=utf-8'],
    ['/a%20b/mesh.wasm', 'application/wasm'],
  ])('gives %s as %s', async (path, type) => {
    const answer = await fetch(address + path);
    expect(answer.status).toBe(200);
    expect(answer.headers.get('content-type')).toBe(type);
  });

  it.each(['/missing.js', '/a%20b', '/..%2Fsecret.txt', '/%2e%2e/secret.txt', '/open%00', '/%ZZ'])(
    'gives nothing for %s',
    async (path) => {
      const answer = await fetch(address + path);
      expect(answer.status).toBe(404);
      expect(await answer.text()).not.toContain('not for the page');
    },
  );

  it('takes no posts, and says so when its port is taken', async () => {
    expect((await fetch(address, { method: 'POST' })).status).toBe(405);
    await expect(serveFolder(folder, readPort(server))).rejects.toMatchObject({ code: 'EADDRINUSE' });
  });
});
