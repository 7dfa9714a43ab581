import { css } from 'lit';

/** What pages with forms have in common, as those of the shelf, the shortlist and the questions: fields, buttons, tables, notes. */
export const formStyles = css`
  :host {
    display: block;
    color: var(--ink);
    font: 14px/20px var(--sans);
    font-variant-numeric: tabular-nums lining-nums;
  }
  .bar {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
    align-items: center;
  }
  h3 {
    margin: 20px 0 8px;
    font-size: 15px;
    line-height: 20px;
    font-weight: 600;
  }
  p {
    margin: 8px 0;
    max-width: 72ch;
    text-wrap: pretty;
  }
  .quiet,
  small {
    color: var(--ink2);
    font-size: 12.5px;
    line-height: 18px;
  }
  small {
    display: block;
  }
  .wrong {
    color: var(--fail);
  }
  input:not([type='checkbox'], [type='radio']),
  textarea,
  select {
    box-sizing: border-box;
    width: 100%;
    min-width: 0;
    padding: 5px 10px;
    font: inherit;
    color: var(--ink);
    background: var(--paper);
    border: 1px solid var(--ink3);
    border-radius: 5px;
  }
  textarea {
    font: 13px/18px var(--mono);
    resize: vertical;
  }
  button {
    font: inherit;
    min-height: 32px;
    padding: 0 12px;
    color: var(--ink);
    background: var(--paper);
    border: 1px solid var(--line2);
    border-radius: 5px;
    cursor: pointer;
    white-space: nowrap;
  }
  button:hover {
    background: color-mix(in srgb, var(--ink) 7%, var(--paper));
  }
  button:disabled {
    opacity: 0.4;
    cursor: default;
  }
  button.main {
    color: var(--on-accent);
    background: var(--accent);
    border-color: var(--accent);
  }
  button.link {
    padding: 0;
    text-align: start;
    white-space: normal;
    color: var(--accent);
    background: none;
    border-color: transparent;
  }
  :focus-visible {
    outline: 2px solid var(--accent);
    outline-offset: 1px;
  }
  /* In the place of the border, not a second one round it. */
  :is(input, textarea, select):focus-visible {
    outline-offset: -1px;
  }
  ul {
    margin: 4px 0;
    padding-inline-start: 18px;
  }
  .audit {
    display: grid;
    grid-template-columns: auto 1fr;
    gap: 4px 10px;
    align-items: start;
    margin: 12px 0;
    padding: 10px 12px;
    background: var(--panel);
    border: 1px solid var(--line);
    border-radius: 5px;
  }
  .audit ul {
    margin: 0;
    padding: 0;
    list-style: none;
  }
  @media (pointer: coarse), (max-width: 1023px) {
    button,
    input:not([type='checkbox'], [type='radio']),
    select {
      min-height: 44px;
    }
  }
  @media (max-width: 500px) {
    .audit {
      grid-template-columns: 1fr;
    }
  }
`;
