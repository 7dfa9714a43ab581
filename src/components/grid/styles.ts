import { css } from 'lit';

/** Cells are placed by left and top alone: no transform and no containment of their own, which would double a repaint. */
export const gridStyles = css`
  :host {
    display: block;
    position: relative;
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
    padding: 0 10px;
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
  .swatch {
    width: 18px;
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
  }
  .row.section {
    border-bottom-color: var(--line2);
  }
  .rowhead {
    position: sticky;
    left: 0;
    z-index: 1;
    box-sizing: border-box;
    width: 44px;
    height: 100%;
    background: var(--panel);
    border-right: 1px solid var(--line2);
    color: var(--ink3);
    font-size: 11px;
    line-height: 14px;
    display: flex;
    align-items: center;
    justify-content: center;
  }
  .rowhead.active {
    color: var(--accent);
    font-weight: 600;
  }
  .cell {
    position: absolute;
    top: 0;
    bottom: 0;
    box-sizing: border-box;
    border-right: 1px solid var(--line);
    padding: 0 10px;
    display: flex;
    align-items: center;
    gap: 6px;
    white-space: nowrap;
    overflow: clip;
    cursor: cell;
  }
  .section .cell {
    border-right-color: transparent;
  }
  .cell.heading {
    font-size: 15px;
    font-weight: 600;
    overflow: visible;
    align-items: end;
    padding-bottom: 5px;
    z-index: 1;
  }
  .cell.heading .tally {
    display: inline-flex;
    gap: 6px;
    margin-left: 14px;
    font-size: 12.5px;
    font-weight: 400;
  }
  .tally span {
    display: inline-flex;
    gap: 2px;
    align-items: center;
  }
  .cell.label {
    color: var(--ink2);
    font-size: 12.5px;
  }
  .cell.note {
    color: var(--ink2);
    overflow: visible;
    border-right-color: transparent;
    font-size: 12.5px;
  }
  .cell.number {
    justify-content: flex-end;
    padding-right: 4px;
    gap: 4px;
  }
  .unit {
    flex: none;
    width: 38px;
    color: var(--ink2);
    font-size: 12.5px;
    font-stretch: 90%;
    overflow: visible;
  }
  .typed .value {
    border-bottom: 1px dotted var(--ink3);
    line-height: 18px;
  }
  .changed {
    border-left: 2px solid var(--accent);
    padding-left: 8px;
  }
  .changed .value {
    font-weight: 600;
  }
  .was {
    color: var(--ink3);
    font-size: 12.5px;
    overflow: clip;
    text-overflow: ellipsis;
    flex: 0 1 auto;
    min-width: 0;
  }
  .words {
    overflow: clip;
    text-overflow: ellipsis;
    min-width: 0;
  }
  .reason {
    color: var(--ink2);
    font-size: 12.5px;
    overflow: clip;
    text-overflow: ellipsis;
    min-width: 0;
  }
  .chip {
    display: inline-flex;
    align-items: center;
    gap: 4px;
    flex: none;
    border: 1px solid;
    border-radius: 10px;
    padding: 0 8px 0 5px;
    font-weight: 600;
    font-size: 12.5px;
    line-height: 18px;
  }
  .good {
    color: var(--good);
  }
  .caution {
    color: var(--caution);
  }
  .fail {
    color: var(--fail);
  }
  .chip.good {
    background: var(--good-bg);
    border-color: var(--good-line);
  }
  .chip.caution {
    background: var(--caution-bg);
    border-color: var(--caution-line);
  }
  .chip.fail {
    background: var(--fail-bg);
    border-color: var(--fail-line);
  }
  .cell.waiting {
    color: var(--ink3);
  }
  .cell.problem {
    color: var(--fail);
    font-size: 12.5px;
  }
  .cell.doubt::after,
  .cell.error::after {
    content: '';
    position: absolute;
    right: 0;
    top: 0;
    border: 4px solid transparent;
    border-top-color: var(--caution);
    border-right-color: var(--caution);
  }
  .cell.error::after {
    border-top-color: var(--fail);
    border-right-color: var(--fail);
  }
  .icon {
    width: 14px;
    height: 14px;
    flex: none;
    fill: none;
    stroke: currentColor;
    stroke-width: 1.4;
    stroke-linecap: round;
    stroke-linejoin: round;
  }
  .spark {
    width: 100%;
    height: 20px;
    fill: none;
    stroke: currentColor;
    stroke-width: 1.4;
  }
  .spark.woofer {
    color: var(--woofer);
  }
  .spark.tweeter {
    color: var(--tweeter);
  }
  .selection,
  .active,
  .outline {
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
  input.inline {
    position: absolute;
    z-index: 2;
    box-sizing: border-box;
    border: 2px solid var(--accent);
    background: var(--paper);
    color: var(--ink);
    font: inherit;
    padding: 0 8px;
    outline: none;
    min-width: 120px;
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
