// Making elements: one line each, nothing from text to markup.

type Attributes = Readonly<Record<string, string | number | boolean | undefined>>;

/** An HTML element with attributes and children; `class` and `text` are taken as they read. */
export function html<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  attributes: Attributes = {},
  ...children: (Node | string)[]
): HTMLElementTagNameMap[K] {
  const element = document.createElement(tag);
  setAttributes(element, attributes);
  element.append(...children);
  return element;
}

const SVG = "http://www.w3.org/2000/svg";

/** An SVG element with attributes and children. */
export function svg<K extends keyof SVGElementTagNameMap>(
  tag: K,
  attributes: Attributes = {},
  ...children: Node[]
): SVGElementTagNameMap[K] {
  const element = document.createElementNS(SVG, tag);
  setAttributes(element, attributes);
  element.append(...children);
  return element;
}

/** Attributes that differ from what stands there; false or undefined takes one away. */
export function setAttributes(element: Element, attributes: Attributes): void {
  for (const [name, value] of Object.entries(attributes)) {
    if (value === undefined || value === false) element.removeAttribute(name);
    else if (value === true) element.setAttribute(name, "");
    else if (element.getAttribute(name) !== String(value)) element.setAttribute(name, String(value));
  }
}

/** As many children as there are items, kept where they are; `make` for a new one, `update` for each. */
export function reconcileChildren<T, E extends Element>(
  parent: Element,
  items: readonly T[],
  make: () => E,
  update: (e: E, item: T) => void,
) {
  while (parent.children.length > items.length) parent.lastElementChild!.remove();
  while (parent.children.length < items.length) parent.append(make());
  items.forEach((item, i) => {
    update(parent.children[i] as unknown as E, item);
  });
}
