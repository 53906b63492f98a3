/** What is packed stands behind the page's script, which starts before a browser has read it. */
const isRead = (): Promise<unknown> =>
  document.readyState === 'loading'
    ? new Promise((resolve) => document.addEventListener('DOMContentLoaded', resolve))
    : Promise.resolve();

/** Unpacks compressed data from an inert element of the page. */
export const unpack = async (id: string, type = ''): Promise<Blob> => {
  // What has asked for it is painted first.
  await new Promise((resolve) => setTimeout(resolve));
  await isRead();
  const binary = atob(document.getElementById(id)?.textContent?.trim() ?? '');
  const bytes = new Uint8Array(binary.length);
  for (let i = 0; i < bytes.length; i++) bytes[i] = binary.charCodeAt(i);
  const unpacked = new Blob([bytes]).stream().pipeThrough(new DecompressionStream('deflate-raw'));
  const blob = await new Response(unpacked).blob();
  return blob.slice(0, blob.size, type);
};
