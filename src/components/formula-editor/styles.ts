import { css, unsafeCSS } from 'lit';
import { palette } from './reference-colours.ts';

const references = palette.map((colour, index) => `.reference-${String(index)} { color: ${colour}; }`).join('\n');

/** One line on paper; what opens from it lies over the sheet. */
export const editorStyles = css`
  :host {
    display: block;
    position: relative;
    z-index: 20;
    color: var(--ink);
    font: 14px/20px var(--mono);
  }
  .field {
    background: var(--paper);
    border: 1px solid var(--line2);
    border-radius: 5px;
  }
  .field:focus-within {
    border-color: var(--accent);
    box-shadow: 0 0 0 1px var(--accent);
  }
  .cm-editor.cm-focused {
    outline: none;
  }
  .cm-editor .cm-scroller {
    font: 14px/20px var(--mono);
    overflow-x: auto;
    scrollbar-width: none;
  }
  .cm-editor .cm-content {
    padding: 3px 0;
    caret-color: var(--accent);
  }
  .cm-editor .cm-line {
    padding: 0 8px;
  }
  .cm-editor .cm-cursor {
    border-left-color: var(--accent);
  }
  ${unsafeCSS(references)}
  .finding-error {
    text-decoration: underline wavy var(--fail);
    text-underline-offset: 3px;
  }
  .finding-doubt {
    text-decoration: underline wavy var(--caution);
    text-underline-offset: 3px;
  }
  .cm-editor .cm-tooltip.cm-tooltip-autocomplete {
    background: var(--paper);
    border: 1px solid var(--line2);
    z-index: 30;
  }
  .cm-editor .cm-tooltip.cm-tooltip-autocomplete > ul {
    max-height: 240px;
    max-width: min(640px, 90vw);
    font: 13px/18px var(--mono);
  }
  .cm-editor .cm-tooltip.cm-tooltip-autocomplete > ul > li {
    padding: 3px 8px;
    color: var(--ink);
  }
  .cm-editor .cm-tooltip.cm-tooltip-autocomplete > ul > li[aria-selected] {
    background: var(--accent-soft);
    color: var(--ink);
  }
  .cm-completionDetail {
    margin-left: 10px;
    color: var(--ink2);
    font: 12.5px/18px var(--sans);
  }
  .hint {
    position: absolute;
    top: calc(100% + 4px);
    left: 0;
    z-index: 25;
    max-width: min(640px, 90vw);
    padding: 6px 10px;
    background: var(--paper);
    border: 1px solid var(--line2);
    font: 12.5px/18px var(--sans);
    color: var(--ink2);
  }
  .hint code {
    font: 13px/18px var(--mono);
  }
  .hint b {
    color: var(--accent);
  }
  .hint p {
    margin: 0;
  }
  .hint button {
    padding: 0;
    font: inherit;
    color: var(--accent);
    text-decoration: underline;
    background: none;
    border: 0;
    cursor: pointer;
  }
`;
