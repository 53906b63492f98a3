/** The element of the page with an id. */
export const find = <E extends Element>(id: string, kind: new () => E): E => {
  const found = document.getElementById(id);
  if (!(found instanceof kind)) throw new Error(`The page has no ${id}`);
  return found;
};

/** Sets the text of an element that holds nothing else, only where it has changed, as the browser lays out again what is set. */
export const setText = (node: Element, text: string): void => {
  const { firstChild } = node;
  if (!(firstChild instanceof Text)) node.textContent = text;
  else if (firstChild.data !== text) firstChild.data = text;
};

export const setAttribute = (node: Element, name: string, value: string): void => {
  if (node.getAttribute(name) !== value) node.setAttribute(name, value);
};

/** A length in px as it is written in SVG: tenths are finer than any screen. */
export const px = (value: number): string => String(Math.round(value * 10) / 10);

/** A new element of a drawing, the last within another. @param look class names */
export const addSvg = <Tag extends keyof SVGElementTagNameMap>(
  within: Element,
  tag: Tag,
  look = '',
): SVGElementTagNameMap[Tag] => {
  const node = document.createElementNS('http://www.w3.org/2000/svg', tag);
  if (look !== '') node.setAttribute('class', look);
  within.append(node);
  return node;
};

/** Sets a path's data only where it has changed, as the browser paints again what is set. */
export const drawPath = (path: SVGPathElement, data: string): void => setAttribute(path, 'd', data);

/** Sizes an SVG in px. */
export const sizeSvg = (node: SVGSVGElement, width: number, height: number): void => {
  const [w, h] = [px(width), px(height)];
  setAttribute(node, 'width', w);
  setAttribute(node, 'height', h);
  setAttribute(node, 'viewBox', `0 0 ${w} ${h}`);
};

/** Lets the browser do what is due, such as painting, and goes on at once: a timer would wait 4 ms. */
export const nextTask = (): Promise<void> =>
  new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      resolve();
    };
    port2.postMessage(null);
  });
