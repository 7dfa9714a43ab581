import { css } from 'lit';

/** Two columns: the list of functions, and the page of one. */
export const guideStyles = css`
  :host {
    display: grid;
    grid-template-columns: minmax(180px, 260px) minmax(0, 1fr);
    grid-template-rows: minmax(0, 1fr);
    color: var(--ink);
    background: var(--paper);
    font: 14px/20px var(--sans);
  }
  nav {
    display: flex;
    flex-direction: column;
    min-height: 0;
    background: var(--panel);
    border-right: 1px solid var(--line2);
  }
  input {
    margin: 12px 12px 4px;
    padding: 5px 10px;
    font: inherit;
    color: var(--ink);
    background: var(--paper);
    border: 1px solid var(--ink3);
    border-radius: 5px;
  }
  .count {
    margin: 0 12px 4px;
    color: var(--ink2);
    font-size: 12px;
    line-height: 16px;
  }
  .list {
    flex: 1;
    min-height: 0;
    overflow-y: auto;
    padding: 0 12px 12px;
  }
  h3 {
    margin: 16px 0 4px;
    color: var(--ink2);
    font-size: 12px;
    line-height: 16px;
    font-weight: 600;
  }
  .list h3 {
    position: sticky;
    top: 0;
    margin: 0;
    padding: 14px 0 4px;
    background: var(--panel);
  }
  ul {
    margin: 0;
    padding: 0;
    list-style: none;
  }
  li button {
    width: 100%;
    padding: 4px 8px;
    font: 12.5px/18px var(--mono);
    color: var(--ink);
    text-align: left;
    overflow-wrap: anywhere;
    background: none;
    border: 0;
    border-radius: 5px;
    cursor: pointer;
  }
  li button[aria-current] {
    background: var(--accent-soft);
    font-weight: 600;
  }
  article {
    min-height: 0;
    overflow-y: auto;
    padding: 16px 20px 20px;
  }
  h2 {
    margin: 0 0 8px;
    font: 500 16px/24px var(--mono);
    overflow-wrap: anywhere;
  }
  p {
    margin: 4px 0;
    max-width: 68ch;
  }
  dl {
    margin: 0;
  }
  dl > div {
    display: grid;
    grid-template-columns: 120px minmax(0, 1fr);
    gap: 10px;
    padding: 5px 0;
    border-bottom: 1px solid var(--line);
  }
  dd {
    margin: 0;
  }
  small {
    display: block;
    color: var(--ink2);
    font-size: 12.5px;
    line-height: 18px;
  }
  code {
    font: 13px/20px var(--mono);
    overflow-wrap: anywhere;
  }
  .example {
    padding: 6px 10px;
    background: var(--panel);
    border: 1px solid var(--line);
  }
  .use {
    min-height: 32px;
    margin-top: 4px;
    padding: 0 14px;
    font: inherit;
    color: var(--ink);
    background: var(--paper);
    border: 1px solid var(--line2);
    border-radius: 5px;
    cursor: pointer;
  }
  :focus-visible {
    outline: 2px solid var(--accent);
    outline-offset: -2px;
  }
  @media (max-width: 640px) {
    :host {
      grid-template-columns: minmax(0, 1fr);
      grid-template-rows: 220px minmax(0, 1fr);
    }
  }
`;
