import { css } from 'lit';

/** The heading, the crosshair and the table of every plot. */
export const plotStyles = css`
  :host {
    display: block;
    container-type: inline-size;
    color: var(--ink);
    font-size: 14px;
    line-height: 20px;
    font-variant-numeric: tabular-nums lining-nums;
  }
  .head {
    display: flex;
    align-items: baseline;
    gap: 8px;
    min-height: 28px;
  }
  h2 {
    margin: 0;
    padding-block: 4px;
    font-size: 14px;
    line-height: 20px;
    font-weight: 600;
  }
  .detail,
  .compared {
    color: var(--ink2);
    font-size: 12.5px;
    line-height: 18px;
    font-stretch: 90%;
    white-space: nowrap;
  }
  .end {
    display: flex;
    flex: none;
    align-self: start;
    align-items: center;
    min-height: 28px;
    gap: 2px;
    margin-inline-start: auto;
  }
  .end .compared {
    margin-inline-end: 6px;
  }
  .compared svg {
    width: 20px;
    height: 4px;
    margin-inline-end: 5px;
    vertical-align: middle;
  }
  @media print {
    button.values,
    .crosshair {
      display: none;
    }
  }
  button.values {
    margin: 0;
    padding: 2px 4px;
    min-height: 24px;
    border: 1px solid transparent;
    border-radius: 5px;
    background: none;
    color: var(--ink2);
    font: inherit;
    font-size: 12.5px;
    line-height: 18px;
    cursor: pointer;
  }
  button.values:hover {
    background: color-mix(in srgb, var(--ink) 7%, transparent);
  }
  button.values[aria-expanded='true'] {
    border-color: var(--line2);
  }
  :focus-visible {
    outline: 2px solid var(--accent);
    outline-offset: 2px;
  }
  .stage {
    position: relative;
  }
  svg.drawing {
    display: block;
    overflow: visible;
  }
  .crosshair {
    position: absolute;
    cursor: crosshair;
    touch-action: pan-y;
  }
  .readout {
    position: absolute;
    z-index: 1;
    padding: 4px 8px;
    border: 1px solid var(--line2);
    border-radius: 5px;
    background: var(--paper);
    color: var(--ink2);
    font-size: 12px;
    line-height: 17px;
    white-space: nowrap;
    pointer-events: none;
  }
  .readout b {
    color: var(--ink);
    font-weight: 600;
  }
  .readout dl {
    display: grid;
    grid-template-columns: auto auto auto;
    column-gap: 6px;
    margin: 0;
  }
  .readout dd {
    margin: 0;
    color: var(--ink);
    text-align: end;
  }
  .readout svg {
    align-self: center;
    width: 18px;
    height: 4px;
  }
  .table {
    max-height: 260px;
    margin-top: 6px;
    overflow: auto;
    border: 1px solid var(--line);
    background: var(--paper);
  }
  table {
    width: 100%;
    border-collapse: collapse;
    font-size: 12.5px;
    line-height: 18px;
  }
  th,
  td {
    padding: 2px 10px;
    border-bottom: 1px solid var(--line);
    text-align: end;
    font-weight: 400;
    white-space: nowrap;
  }
  thead th {
    position: sticky;
    top: 0;
    background: var(--panel);
    color: var(--ink2);
    font-weight: 600;
  }
  .empty {
    margin: 0;
    padding: 24px 0;
    color: var(--ink2);
  }
`;
