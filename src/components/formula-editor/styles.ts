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
    display: grid;
    max-height: 40vh;
    overflow: auto;
    scrollbar-width: thin;
    background: var(--paper);
    border: 1px solid var(--line2);
    border-radius: 5px;
  }
  .field:focus-within {
    border-color: var(--accent);
    box-shadow: 0 0 0 1px var(--accent);
  }
  /* The layer makes the room that the text needs; the field of the same letters lies over it. */
  .line,
  textarea {
    grid-area: 1 / 1;
    box-sizing: border-box;
    width: 100%;
    min-height: 26px;
    margin: 0;
    padding: 3px 8px;
    font: 14px/20px var(--mono);
    font-variant-ligatures: none;
    letter-spacing: 0;
    tab-size: 1;
    text-align: start;
    white-space: pre-wrap;
    overflow-wrap: anywhere;
    word-break: normal;
  }
  textarea {
    overflow: hidden;
    resize: none;
    color: transparent;
    caret-color: var(--accent);
    background: none;
    border: 0;
    outline: none;
  }
  textarea::selection {
    color: transparent;
    background: color-mix(in srgb, var(--accent) 28%, transparent);
  }
  /* An input method underlines letters of its own, so that they must be seen as it draws them. */
  .composing textarea {
    color: var(--ink);
  }
  .composing .line {
    visibility: hidden;
  }
  @media (forced-colors: active) {
    textarea {
      color: FieldText;
    }
    .line {
      visibility: hidden;
    }
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
  .said {
    position: absolute;
    width: 1px;
    height: 1px;
    margin: 0;
    overflow: hidden;
    clip-path: inset(50%);
  }
  .popup,
  .below {
    position: absolute;
    top: calc(100% + 4px);
    left: 0;
    z-index: 25;
    box-sizing: border-box;
    max-width: min(640px, 90vw);
  }
  .popup {
    max-height: 246px;
    margin: 0;
    padding: 0;
    overflow-y: auto;
    background: var(--paper);
    border: 1px solid var(--line2);
    list-style: none;
    font: 13px/18px var(--mono);
  }
  .popup li {
    padding: 3px 8px;
    color: var(--ink);
    cursor: default;
  }
  .popup li[aria-selected='true'] {
    background: var(--accent-soft);
  }
  .popup small {
    margin-left: 10px;
    color: var(--ink2);
    font: 12.5px/18px var(--sans);
  }
  .problems {
    border: 1px solid var(--line2);
  }
  .problem {
    margin: 0;
    padding: 6px 10px;
    font: 12.5px/18px var(--sans);
    color: var(--caution);
    background: var(--caution-bg);
  }
  .problem.error {
    color: var(--fail);
    background: var(--fail-bg);
  }
  .hint {
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
