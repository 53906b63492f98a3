type Attributes = Readonly<Record<string, string | number | boolean | EventListener | undefined>>;

/** Makes an element. `on…` are listeners; true sets an attribute without a value; false and undefined leave it out. */
export const element = <Tag extends keyof HTMLElementTagNameMap>(
  tag: Tag,
  attributes: Attributes = {},
  ...children: readonly (Node | string)[]
): HTMLElementTagNameMap[Tag] => {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (typeof value === 'function') made.addEventListener(name.slice(2), value);
    else if (value === true) made.setAttribute(name, '');
    else if (value !== undefined && value !== false) made.setAttribute(name, String(value));
  }
  made.append(...children);
  return made;
};

/** Sets a text only where it has changed, for the browser lays out anew what is set. */
export const setText = (node: Node, text: string): void => {
  if (node.textContent !== text) node.textContent = text;
};

export const setAttribute = (node: Element, name: string, value: string): void => {
  if (node.getAttribute(name) !== value) node.setAttribute(name, value);
};
