import type * as z from 'zod';

/**
 * A schema that remembers each object that it found right, and what it read of it: while a hand moves a line, a plan is read
 * at every move, and most of its entries are the same objects as before. What is read may not be changed in place.
 */
export const remembered = <Schema extends z.ZodType>(schema: Schema): Schema => {
  const found = new WeakMap<object, unknown>();
  const { run } = schema._zod;
  schema._zod.run = (payload, context) => {
    const { value: given } = payload;
    if (typeof given !== 'object' || given === null) return run(payload, context);
    if (found.has(given)) return { ...payload, value: found.get(given) };
    const result = run(payload, context);
    if (!(result instanceof Promise) && result.issues.length === 0) found.set(given, result.value);
    return result;
  };
  return schema;
};
