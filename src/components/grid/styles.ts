import { css } from 'lit';

/** The frame of the grid: heads, rows, rings and the input over a cell. */
export const gridStyles = css`
  :host {
    display: block;
    position: relative;
    contain: content;
    background: var(--paper);
    color: var(--ink);
    font: 14px/20px var(--sans);
    font-variant-numeric: tabular-nums lining-nums;
  }
  [hidden] {
    display: none !important;
  }
  .scroller {
    position: absolute;
    inset: 0;
    overflow: auto;
    outline: none;
  }
  .heads {
    position: sticky;
    top: 0;
    z-index: 3;
    height: 30px;
    background: var(--panel);
    border-bottom: 1px solid var(--line2);
  }
  .corner,
  .head {
    position: absolute;
    top: 0;
    height: 30px;
    box-sizing: border-box;
    border-right: 1px solid var(--line);
    display: flex;
    align-items: center;
    gap: 6px;
    padding: 0 6px 0 10px;
    font-weight: 600;
    white-space: nowrap;
    overflow: clip;
  }
  .corner {
    position: sticky;
    left: 0;
    width: 44px;
    background: var(--panel);
    z-index: 1;
  }
  .head small {
    color: var(--ink3);
    font-weight: 400;
    font-size: 12px;
  }
  .head.active small {
    color: var(--accent);
  }
  .head b {
    font-weight: inherit;
    overflow: clip;
    text-overflow: ellipsis;
  }
  .swatch {
    /* Gives way before the title does. */
    flex: 0 99 18px;
    min-width: 8px;
    border-top: 2px solid var(--ink);
  }
  .swatch.woofer {
    border-color: var(--woofer);
  }
  .swatch.tweeter {
    border-top-style: dashed;
    border-color: var(--tweeter);
  }
  .swatch.system {
    border-top-width: 3px;
    border-color: var(--system);
  }
  .grip {
    position: absolute;
    right: 0;
    top: 0;
    bottom: 0;
    width: 8px;
    cursor: col-resize;
    touch-action: none;
  }
  .grip:hover {
    background: var(--accent-soft);
  }
  .body {
    position: relative;
  }
  .row {
    position: absolute;
    left: 0;
    box-sizing: border-box;
    border-bottom: 1px solid var(--line);
    contain: layout style;
  }
  .row[data-pinned] {
    width: 0 !important;
    border: 0;
    pointer-events: none;
  }
  .row.section {
    border-bottom-color: var(--line2);
  }
  .numbers {
    position: sticky;
    left: 0;
    /* Above words that run on into the next cells. */
    z-index: 2;
    box-sizing: border-box;
    width: 44px;
    height: 100%;
    background: var(--panel);
    border-right: 1px solid var(--line2);
    contain: layout style;
  }
  .rowhead {
    position: absolute;
    left: 0;
    right: 0;
    box-sizing: border-box;
    border-bottom: 1px solid var(--line);
    color: var(--ink3);
    font-size: 11px;
    line-height: 14px;
    display: flex;
    align-items: center;
    justify-content: center;
  }
  .rowhead.section {
    border-bottom-color: var(--line2);
  }
  .rowhead.active {
    color: var(--accent);
    font-weight: 600;
  }
  .body > .selection,
  .body > .active,
  .body > .outline {
    position: absolute;
    box-sizing: border-box;
    pointer-events: none;
  }
  .body > .selection {
    background: color-mix(in srgb, var(--accent) 10%, transparent);
    outline: 1px solid var(--accent);
  }
  .body > .active {
    border: 2px solid var(--accent);
  }
  .body > .outline {
    border: 1.5px solid;
  }
  .scroller:focus-visible .body > .active {
    box-shadow: 0 0 0 2px color-mix(in srgb, var(--accent) 30%, transparent);
  }
  .editing {
    position: absolute;
    z-index: 2;
    min-width: 120px;
  }
  .editing > div {
    height: 100%;
  }
  input.inline {
    box-sizing: border-box;
    width: 100%;
    height: 100%;
    border: 2px solid var(--accent);
    background: var(--paper);
    color: var(--ink);
    font: inherit;
    padding: 0 8px;
    outline: 2px solid color-mix(in srgb, var(--accent) 30%, transparent);
  }
  .hidden {
    position: absolute;
    width: 1px;
    height: 1px;
    overflow: hidden;
    clip-path: inset(50%);
  }
  @media (forced-colors: active) {
    .body > .active,
    .body > .selection {
      border-color: Highlight;
      outline-color: Highlight;
    }
  }
`;
