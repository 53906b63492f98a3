import { unpack } from './unpack.ts';

const made = new Map<string, unknown>();
const asked = new Map<string, Promise<unknown>>();

const run = async (id: string): Promise<unknown> => {
  const script = document.createElement('script');
  script.textContent = await (await unpack(id)).text();
  document.head.append(script);
  script.remove();
  if (!made.has(id)) throw new Error(`${id} did not run`);
  return made.get(id);
};

/**
 * Parts of the page's script that lie packed in it until they are needed. The build puts this in the place of modules that
 * import each other: each `import()` becomes a call of `import`, and each part a script that calls `add`. The page's
 * security policy allows these scripts alone.
 */
export const pageParts = {
  /** What the page's own modules export to its parts. */
  shared: {},
  add(id: string, make: (shared: object) => unknown): void {
    made.set(id, make(this.shared));
  },
  import(id: string): Promise<unknown> {
    const part = asked.get(id) ?? run(id);
    asked.set(id, part);
    return part;
  },
};
