// Starts the system's own browsers with the settings that readers have.
import puppeteer from 'puppeteer-core';
import { existsSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Nothing in a test waits on the clock; this only ends a test whose page never answers. */
export const PATIENCE_MS = Number(process.env.STEADFOOT_PATIENCE_MS ?? 90_000);

const CHROMIUM_ARGS = [
  // The tests often run as root in a container, where Chromium's own sandbox refuses to start.
  '--no-sandbox',
  '--disable-gpu',
  '--disable-dev-shm-usage',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--disable-lcd-text',
  '--font-render-hinting=none',
];

const FIREFOX_PREFS = {
  // The driver's own profile switches this off, and then things work from disk that no reader could use.
  'security.fileuri.strict_origin_policy': true,
  'browser.download.folderList': 2,
  'browser.download.useDownloadDir': true,
  'browser.download.alwaysOpenPanel': false,
  'browser.download.always_ask_before_handling_new_types': false,
  'browser.helperApps.neverAsk.saveToDisk': 'application/json,application/octet-stream,text/plain,text/html',
  'app.update.enabled': false,
  'network.captive-portal-service.enabled': false,
  'network.connectivity-service.enabled': false,
  'datareporting.policy.dataSubmissionEnabled': false,
};

const PROGRAMS = {
  chromium: [process.env.STEADFOOT_CHROMIUM, '/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'],
  firefox: [process.env.STEADFOOT_FIREFOX, '/usr/bin/firefox-esr', '/usr/bin/firefox'],
};

const running = new Map();

/** The path of a browser's program; an error that names what to install when there is none. */
export function programOf(name) {
  const path = PROGRAMS[name].find((candidate) => candidate && existsSync(candidate));
  if (!path) throw new Error(`no ${name} found; \`sh tests/run\` installs it`);
  return path;
}

/**
 * A running browser of that name; the same one for every test of a file. `look` is "light" or "dark", `scripts` "on" or
 * "off": Firefox takes both as settings of the whole browser.
 */
export async function browserOf(name, { look = 'light', scripts = 'on' } = {}) {
  const key = name === 'firefox' ? `${name} ${look} ${scripts}` : name;
  if (!running.has(key)) running.set(key, start(name, look, scripts));
  return running.get(key);
}

async function start(name, look, scripts) {
  const downloads = await mkdtemp(join(tmpdir(), 'steadfoot-saved-'));
  const common = {
    executablePath: programOf(name),
    headless: true,
    timeout: PATIENCE_MS,
    protocolTimeout: 2 * PATIENCE_MS,
    defaultViewport: null,
  };
  const browser = name === 'firefox'
    ? await puppeteer.launch({
      ...common,
      browser: 'firefox',
      extraPrefsFirefox: {
        ...FIREFOX_PREFS,
        'browser.download.dir': downloads,
        // 0 is dark and 1 is light in this setting.
        'layout.css.prefers-color-scheme.content-override': look === 'dark' ? 0 : 1,
        'javascript.enabled': scripts === 'on',
      },
    })
    : await puppeteer.launch({
      ...common,
      pipe: true,
      args: CHROMIUM_ARGS,
    });
  return { browser, downloads };
}

/** Ends every browser that was started. Each test file calls it in `after`. */
export async function closeBrowsers() {
  for (const started of running.values()) {
    const { browser, downloads } = await started;
    await browser.close();
    await rm(downloads, { recursive: true, force: true });
  }
  running.clear();
}
