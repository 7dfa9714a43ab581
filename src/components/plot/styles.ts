import { css } from 'lit';

/** Ink, lines and hatches of every plot. Curves are told apart by colour and by line. */
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
    flex-wrap: wrap;
    align-items: baseline;
    gap: 0 10px;
    min-height: 24px;
    padding-bottom: 2px;
  }
  h2 {
    margin: 0;
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
  }
  .end {
    display: flex;
    align-items: baseline;
    gap: 10px;
    margin-inline-start: auto;
  }
  .compared svg {
    width: 20px;
    height: 4px;
    margin-inline-end: 5px;
    vertical-align: middle;
  }
  button.values {
    margin: 0;
    padding: 2px 6px;
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
  text {
    fill: var(--ink3);
    font-size: 11px;
    stroke: none;
  }
  .minor,
  .major,
  .edge,
  .curve,
  .ghost,
  .limit,
  .needle,
  .leader,
  .hair {
    fill: none;
  }
  .minor {
    stroke: var(--blue1);
  }
  .major {
    stroke: var(--blue2);
  }
  .edge {
    stroke: var(--line2);
  }
  .woofer {
    color: var(--woofer);
  }
  .tweeter {
    color: var(--tweeter);
  }
  .system {
    color: var(--system);
  }
  .other {
    color: var(--ink2);
  }
  .curve {
    stroke: currentColor;
    stroke-width: 1.75;
    stroke-linejoin: round;
  }
  .curve.tweeter {
    stroke-dasharray: 5 2;
  }
  .curve.system {
    stroke-width: 2.1;
  }
  .curve.other {
    stroke-dasharray: 7 2 1.5 2;
  }
  .ghost {
    stroke: var(--ghost);
    stroke-width: 1.4;
    stroke-dasharray: 3 2.5;
  }
  .limit {
    stroke: var(--fail);
    stroke-width: 1.6;
  }
  .hatch-line {
    stroke: var(--fail);
    stroke-width: 1;
    opacity: 0.34;
  }
  .name,
  .reading,
  .limit-name {
    font-size: 12px;
    font-weight: 600;
    stroke: var(--panel);
    stroke-width: 4px;
    stroke-linejoin: round;
    paint-order: stroke;
  }
  .name {
    fill: currentColor;
  }
  .limit-name {
    fill: var(--fail);
  }
  .reading {
    fill: var(--ink);
    font-size: 13px;
  }
  .reading.small {
    fill: var(--ink2);
    font-size: 11px;
    font-weight: 400;
  }
  .reading.broken {
    fill: var(--fail);
  }
  .leader,
  .ring {
    stroke: var(--ink);
    stroke-width: 1.2;
    fill: none;
  }
  .ring {
    stroke-width: 2;
  }
  .leader.broken,
  .ring.broken {
    stroke: var(--fail);
  }
  .needle {
    stroke: var(--accent);
    stroke-width: 1.75;
  }
  .flag {
    fill: var(--accent);
    stroke: none;
  }
  .flag-text {
    fill: var(--on-accent);
    font-weight: 600;
  }
  .dot {
    fill: currentColor;
    stroke: var(--panel);
  }
  .hair {
    stroke: var(--ink3);
    stroke-dasharray: 1 2;
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
  @media (forced-colors: active) {
    .curve,
    .ring,
    .leader {
      stroke: CanvasText;
    }
    .ghost,
    .minor,
    .major,
    .edge {
      stroke: GrayText;
    }
    .limit,
    .hatch-line {
      stroke: LinkText;
    }
    .needle {
      stroke: Highlight;
    }
    .flag {
      fill: Highlight;
    }
    text,
    .name,
    .reading,
    .limit-name {
      fill: CanvasText;
      stroke: Canvas;
    }
    .flag-text {
      fill: HighlightText;
      stroke: none;
    }
    .dot {
      fill: CanvasText;
    }
  }
`;
