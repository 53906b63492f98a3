import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { connect, type Socket } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';

/** Debian's Firefox without a screen or a network, steered over the port that it opens for tests. */
export interface Firefox {
  /** What is downloaded is found here. */
  readonly downloads: string;
  /** A command of the WebDriver standard, as Firefox names it. */
  readonly say: <T>(command: string, parameters?: object) => Promise<T>;
  /** The value of an expression on the page. */
  readonly read: <T>(expression: string) => Promise<T>;
  readonly close: () => Promise<void>;
}

const settings = (downloads: string): string =>
  Object.entries({
    'marionette.port': 0,
    'browser.download.folderList': 2,
    'browser.download.dir': downloads,
    // No network: all that is not a file is sent where nothing listens.
    'network.proxy.type': 1,
    'network.proxy.socks': '127.0.0.1',
    'network.proxy.socks_port': 9,
    'app.normandy.enabled': false,
  })
    .map(([name, value]) => `user_pref(${JSON.stringify(name)}, ${JSON.stringify(value)});\n`)
    .join('');

/** The file once it is there and whole, within a minute. */
const whole = async (path: string): Promise<string> => {
  for (let tries = 0; tries < 600; tries++) {
    const text = existsSync(path) ? readFileSync(path, 'utf8') : '';
    if (text !== '') return text;
    await pause(100);
  }
  throw new Error(`${path} was not written`);
};

/** Messages go both ways as their length, a colon and JSON: `[0, id, command, parameters]`, `[1, id, error, result]`. */
const speak = (socket: Socket): Firefox['say'] => {
  const waiting = new Map<number, (answer: readonly [unknown, unknown]) => void>();
  let heard = Buffer.alloc(0);
  socket.on('data', (data) => {
    heard = Buffer.concat([heard, data]);
    for (;;) {
      const colon = heard.indexOf(':');
      const end = colon + 1 + Number(heard.subarray(0, Math.max(0, colon)));
      if (colon < 0 || heard.length < end) return;
      const message: unknown = JSON.parse(heard.subarray(colon + 1, end).toString());
      heard = heard.subarray(end);
      if (Array.isArray(message)) waiting.get(message[1])?.([message[2], message[3]]);
    }
  });
  let last = 0;
  return async <T>(command: string, parameters: object = {}): Promise<T> => {
    const id = ++last;
    const text = JSON.stringify([0, id, command, parameters]);
    const [error, result] = await new Promise<readonly [unknown, unknown]>((resolve) => {
      waiting.set(id, resolve);
      socket.write(`${Buffer.byteLength(text)}:${text}`);
    });
    waiting.delete(id);
    if (error !== null) throw new Error(`${command}: ${JSON.stringify(error)}`);
    return result as T;
  };
};

export const startFirefox = async (): Promise<Firefox> => {
  const home = mkdtempSync(join(tmpdir(), 'halfpin-firefox-'));
  const downloads = mkdtempSync(join(tmpdir(), 'halfpin-downloads-'));
  writeFileSync(join(home, 'user.js'), settings(downloads));
  const program = spawn('firefox-esr', ['--headless', '--marionette', '--no-remote', '--profile', home], {
    stdio: 'ignore',
  });
  const gone = new Promise((resolve) => program.once('exit', resolve));
  const socket = connect(Number(await whole(join(home, 'MarionetteActivePort'))), '127.0.0.1');
  const say = speak(socket);
  await say('WebDriver:NewSession', { capabilities: { alwaysMatch: { acceptInsecureCerts: false } } });
  return {
    downloads,
    say,
    read: async <T>(expression: string): Promise<T> => {
      const { value } = await say<{ value: T }>('WebDriver:ExecuteScript', {
        script: `return (${expression});`,
        args: [],
      });
      return value;
    },
    close: async () => {
      await say('Marionette:Quit', { flags: ['eForceQuit'] });
      await gone;
      socket.destroy();
      for (const folder of [home, downloads]) rmSync(folder, { recursive: true, force: true });
    },
  };
};
