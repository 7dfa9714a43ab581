import { themeSheet } from '../../src/components/theme.ts';

/** Gives the page the colours and the paper that components of the dock stand on. */
export function paint(): void {
  const paper = new CSSStyleSheet();
  paper.replaceSync('body { background: var(--panel); font-family: var(--sans); }');
  document.adoptedStyleSheets = [themeSheet(), paper];
}
