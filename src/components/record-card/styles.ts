import { css } from 'lit';

/** One cell opened in full, as a card of the dock. */
export const cardStyles = css`
  :host {
    display: block;
    container-type: inline-size;
    color: var(--ink);
    font-size: 14px;
    line-height: 20px;
    font-variant-numeric: tabular-nums lining-nums;
    overflow-wrap: anywhere;
  }
  .head {
    display: flex;
    flex-wrap: wrap;
    align-items: baseline;
    gap: 4px 10px;
    padding-bottom: 6px;
  }
  .head b {
    color: var(--accent);
    font-weight: 600;
  }
  h2 {
    flex: 1 1 160px;
    margin: 0;
    font-size: 15px;
    line-height: 20px;
    font-weight: 600;
  }
  h3 {
    margin: 12px 0 4px;
    color: var(--ink2);
    font-size: 12px;
    line-height: 16px;
    font-weight: 600;
  }
  p {
    margin: 6px 0;
  }
  button {
    min-height: 32px;
    padding: 0 10px;
    border: 1px solid var(--line2);
    border-radius: 5px;
    background: var(--paper);
    color: var(--ink);
    font: inherit;
    font-size: 12.5px;
    white-space: nowrap;
    cursor: pointer;
  }
  button:hover {
    background: color-mix(in srgb, var(--ink) 7%, var(--paper));
  }
  @media (pointer: coarse) {
    button {
      min-height: 44px;
    }
  }
  :focus-visible {
    outline: 2px solid var(--accent);
    outline-offset: 2px;
  }
  p.number {
    display: flex;
    align-items: baseline;
    gap: 6px;
    font-size: 30px;
    line-height: 38px;
    letter-spacing: -0.012em;
  }
  p.number span {
    color: var(--ink2);
    font-size: 16px;
    letter-spacing: 0;
  }
  .exact,
  .quiet {
    color: var(--ink2);
    font-size: 12.5px;
    line-height: 18px;
  }
  dl {
    display: grid;
    grid-template-columns: minmax(0, 1fr) auto;
    margin: 0;
  }
  dl > div {
    display: grid;
    grid-template-columns: subgrid;
    grid-column: 1 / -1;
    align-items: baseline;
    column-gap: 12px;
    padding: 3px 0;
    border-bottom: 1px solid var(--line);
  }
  dt {
    color: var(--ink);
  }
  .meaning {
    margin-inline-start: 8px;
    color: var(--ink2);
    font-size: 12.5px;
  }
  dd {
    margin: 0;
    text-align: end;
  }
  dd.long {
    grid-column: 1 / -1;
    text-align: start;
  }
  .derived {
    margin-inline-start: 6px;
    color: var(--ink3);
    font-size: 12px;
    font-style: italic;
  }
  .note {
    display: grid;
    grid-template-columns: auto minmax(0, 1fr);
    gap: 0 8px;
    margin: 8px 0;
    padding: 8px 10px;
    border-inline-start: 3px solid currentColor;
  }
  .note p {
    grid-column: 2;
    margin: 0;
    color: var(--ink);
  }
  .note p + p {
    margin-top: 4px;
  }
  .note button {
    grid-column: 2;
    justify-self: start;
    margin-top: 8px;
  }
  .note.good {
    background: var(--good-bg);
    color: var(--good);
  }
  .note.caution {
    background: var(--caution-bg);
    color: var(--caution);
  }
  .note.fail {
    background: var(--fail-bg);
    color: var(--fail);
  }
  .note .word {
    color: inherit;
    font-weight: 600;
  }
  .icon {
    width: 18px;
    height: 18px;
    margin-top: 1px;
    fill: none;
    stroke: currentColor;
    stroke-width: 1.5;
    stroke-linecap: round;
    stroke-linejoin: round;
  }
  code {
    display: block;
    padding: 6px 8px;
    border: 1px solid var(--line);
    background: var(--paper);
    font-family: var(--mono, ui-monospace, monospace);
    font-size: 13px;
    line-height: 19px;
    white-space: pre-wrap;
  }
  @media (forced-colors: active) {
    .note {
      border: 1px solid CanvasText;
    }
  }
  .table {
    overflow-x: auto;
  }
  .table table {
    border-collapse: collapse;
    font-size: 13px;
    line-height: 18px;
    overflow-wrap: normal;
  }
  .table th,
  .table td {
    padding: 3px 12px 3px 0;
    border-bottom: 1px solid var(--line);
    text-align: start;
    vertical-align: top;
  }
  .table th {
    color: var(--ink2);
    font-size: 12px;
    font-weight: 600;
  }
  .points {
    max-height: 320px;
    overflow-y: auto;
  }
  .table .number {
    text-align: end;
    white-space: nowrap;
  }
`;
