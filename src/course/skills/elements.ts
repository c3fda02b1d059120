type Child = Node | string;

/** An element with these children. */
export function element<T extends keyof HTMLElementTagNameMap>(tag: T, ...children: Child[]): HTMLElementTagNameMap[T] {
  const made = document.createElement(tag);
  made.append(...children);
  return made;
}

export function link(address: string, words: string): HTMLAnchorElement {
  const made = element('a', words);
  made.href = address;
  return made;
}
