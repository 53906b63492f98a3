// The page as a site: a browser that has visited it once opens it without a network.

import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { extname, join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { folder, halfpin } from '../cli/program.ts';
import { launchChromium } from '../page/launchChromium.mjs';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.png': 'image/png',
  '.webmanifest': 'application/manifest+json',
};
const FILES = ['icon-192.png', 'icon-512.png', 'index.html', 'manifest.webmanifest', 'worker.js'];

const serve = (root: string): Promise<Server> =>
  new Promise((resolve) => {
    const server = createServer(({ url = '/' }, response) => {
      const name = url === '/' ? 'index.html' : url.slice(1);
      if (!FILES.includes(name)) {
        response.writeHead(404).end();
        return;
      }
      response.writeHead(200, { 'content-type': TYPES[extname(name)] });
      response.end(readFileSync(join(root, name)));
    });
    server.listen(0, '127.0.0.1', () => resolve(server));
  });

const site = mkdtempSync(join(tmpdir(), 'halfpin-'));
let server: Server;
let browser: Browser;
beforeAll(async () => {
  expect(halfpin(['page', '--site', site])).toMatchObject({ status: 0, err: '' });
  [server, browser] = await Promise.all([serve(site), launchChromium()]);
});
afterAll(async () => {
  await browser.close();
  server.close();
  rmSync(site, { recursive: true });
});

describe('a site', () => {
  it('opens on the example, and again with the server gone and no network, and makes sheets there', async () => {
    const context = await browser.newContext({ viewport: { width: 390, height: 844 } });
    const page = await context.newPage();
    const faults: string[] = [];
    page.on('pageerror', (error) => faults.push(String(error)));
    page.on('console', (message) => {
      if (message.type() === 'error') faults.push(message.text());
    });
    const address = `http://localhost:${(server.address() as AddressInfo).port}/`;
    await page.goto(address);
    await page.locator('#welcome').waitFor();
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => {}));
    await page.waitForFunction(
      async () => (await navigator.serviceWorker.getRegistration())?.active?.state === 'activated',
    );
    expect(faults).toEqual([]);

    await context.setOffline(true);
    await new Promise((done) => {
      server.close(done);
      server.closeAllConnections();
    });
    for (const path of ['', 'index.html', '?from=home']) {
      await page.goto(address + path);
      await page.locator('.member').first().waitFor();
      expect(await page.locator('.member').count()).toBe(6);
    }
    // Sheets are made in a worker of the page's own, which its policy must still allow.
    await page.click('#take');
    await page.locator('#preview[data-state="ready"]').waitFor();
    expect(faults).toEqual([]);
    await context.close();
  });
});

describe('page --site', () => {
  it('writes the page and what a phone needs to install it, icons in the sizes that the manifest tells', () => {
    expect(readdirSync(site).sort()).toEqual(FILES);
    const manifest = JSON.parse(readFileSync(join(site, 'manifest.webmanifest'), 'utf8'));
    expect(manifest).toMatchObject({ start_url: './', scope: './', display: 'standalone' });
    for (const { src, sizes, purpose } of manifest.icons) {
      const png = readFileSync(join(site, src));
      expect(`${png.readUInt32BE(16)}x${png.readUInt32BE(20)}`).toBe(sizes);
      expect(purpose).toBe('any maskable');
    }
  });

  it('allows by its policy only scripts that it holds, its own worker and files', () => {
    const page = readFileSync(join(site, 'index.html'), 'utf8');
    const [, policy = ''] = /Content-Security-Policy" content="([^"]*)"/u.exec(page) ?? [];
    const rules = new Map(policy.split('; ').map((rule) => [rule.split(' ')[0], rule.split(' ').slice(1)]));
    expect(rules.get('default-src')).toEqual(["'none'"]);
    const parts = page.match(/<script type="text\/plain" id="part-/gu) ?? [];
    expect(rules.get('script-src')).toHaveLength(2 + parts.length);
    expect(rules.get('script-src')?.every((source) => source.startsWith("'sha256-"))).toBe(true);
    expect(rules.get('worker-src')).toEqual(["'self'", 'blob:']);
    expect(rules.get('manifest-src')).toEqual(["'self'"]);
    expect(rules.has('connect-src')).toBe(false);
    expect(readFileSync('dist/halfpin.html', 'utf8')).not.toMatch(/'self'|rel="manifest"/u);
  });

  it('writes over its own files again, and leaves every file that is not its own', () => {
    const where = folder();
    expect(halfpin(['page', '--site', where]).status).toBe(0);
    expect(halfpin(['page', '--site', where])).toMatchObject({ status: 0, err: '' });
    for (const name of FILES) {
      writeFileSync(join(where, name), 'mine');
      expect(halfpin(['page', '--site', where])).toEqual({
        status: 2,
        out: '',
        err: `${join(where, name)}: this file was not made by halfpin, so it is unchanged; choose another --out, or add --force\n`,
      });
      expect(readFileSync(join(where, name), 'utf8')).toBe('mine');
      expect(halfpin(['page', '--site', where, '--force']).status).toBe(0);
    }
  });

  it('asks for a folder where there is a file', () => {
    const where = folder();
    mkdirSync(join(where, 'a'));
    writeFileSync(join(where, 'a', 'file'), '');
    expect(halfpin(['page', '--site', 'a/file'], where)).toEqual({
      status: 2,
      out: '',
      err: '--site: a/file is no folder; give a folder, new or not\n',
    });
  });
});
