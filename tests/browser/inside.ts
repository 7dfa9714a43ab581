/** What is drawn inside an element. */
export const within = (element: Element, selector: string): Element => {
  const found = element.shadowRoot!.querySelector(selector);
  if (!found) throw new Error(`There is no ${selector}.`);
  return found;
};
export const texts = (element: Element, selector: string): string[] =>
  [...element.shadowRoot!.querySelectorAll(selector)].map((one) => one.textContent.trim());
