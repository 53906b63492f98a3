/** What TypeScript's library for pages lacks: events of a service worker. */
interface LifeEvent extends Event {
  waitUntil(work: Promise<unknown>): void;
}
interface AskEvent extends LifeEvent {
  readonly request: Request;
  respondWith(answer: Promise<Response>): void;
}
interface SiteWorker {
  readonly registration: { readonly scope: string };
  addEventListener(type: 'install' | 'activate', listener: (event: LifeEvent) => void): void;
  addEventListener(type: 'fetch', listener: (event: AskEvent) => void): void;
}

/** Defined by the build: the files of the site beside this one, and a fingerprint of them all. */
declare const SITE_FILES: readonly string[];
declare const SITE_VERSION: string;

const worker = self as unknown as SiteWorker;
const { scope } = worker.registration;

/** Sites on one host share its caches, so each names its own by where it is. */
const OURS = `halfpin ${scope} `;
const CACHE = OURS + SITE_VERSION;

/** Keeps all files of the site, past whatever the browser has kept by itself. */
const keepAll = async (): Promise<void> => {
  const cache = await caches.open(CACHE);
  await cache.addAll(SITE_FILES.map((file) => new Request(new URL(file, scope), { cache: 'reload' })));
};

const dropOlder = async (): Promise<void> => {
  const older = (await caches.keys()).filter((name) => name.startsWith(OURS) && name !== CACHE);
  await Promise.all(older.map((name) => caches.delete(name)));
};

const answer = async (request: Request): Promise<Response> => {
  const cache = await caches.open(CACHE);
  const kept = await cache.match(request.url.replace(/(?:index\.html)?(?:[?#].*)?$/u, ''));
  return kept ?? fetch(request);
};

worker.addEventListener('install', (event) => event.waitUntil(keepAll()));
worker.addEventListener('activate', (event) => event.waitUntil(dropOlder()));
worker.addEventListener('fetch', (event) => event.respondWith(answer(event.request)));
