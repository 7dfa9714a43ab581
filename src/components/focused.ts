/** The element that has the focus, inside whatever components. */
export function focused(): HTMLElement | undefined {
  let active = document.activeElement;
  while (active?.shadowRoot?.activeElement) active = active.shadowRoot.activeElement;
  return active instanceof HTMLElement ? active : undefined;
}
