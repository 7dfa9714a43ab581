import { css } from 'lit';

/** The dial of the sheet: a readout and a rule on millimetre paper. */
export const rulerStyles = css`
  :host {
    display: block;
    container-type: inline-size;
    background: var(--paper);
    color: var(--ink);
    font-size: 14px;
    line-height: 20px;
    font-variant-numeric: tabular-nums lining-nums;
  }
  .dial {
    position: relative;
    display: grid;
    grid-template-columns: minmax(210px, auto) minmax(0, 1fr);
    column-gap: 16px;
    padding: 10px 20px 8px;
  }
  .paper {
    position: absolute;
    inset: 0;
    background-image:
      linear-gradient(var(--blue1) 1px, transparent 1px), linear-gradient(90deg, var(--blue1) 1px, transparent 1px);
    background-size: 8px 8px;
    background-position: -1px -1px;
    mask-image: linear-gradient(90deg, transparent 190px, #000 300px);
    pointer-events: none;
  }
  .readout,
  .rule,
  .keys {
    position: relative;
  }
  .readout {
    align-self: center;
  }
  .name {
    display: flex;
    gap: 8px;
    color: var(--ink2);
  }
  .name b {
    color: var(--accent);
    font-weight: 600;
  }
  .number {
    display: flex;
    align-items: baseline;
    gap: 6px;
    white-space: nowrap;
  }
  .number strong {
    font-size: 36px;
    line-height: 40px;
    font-weight: 400;
    letter-spacing: -0.02em;
  }
  .unit {
    color: var(--ink2);
    font-size: 18px;
  }
  .was {
    margin-inline-start: 6px;
    color: var(--ink2);
    font-size: 12.5px;
    font-weight: 600;
  }
  .keys {
    display: flex;
    flex-wrap: wrap;
    justify-content: flex-end;
    gap: 2px 18px;
    min-height: 22px;
    color: var(--ink2);
    font-size: 12px;
    line-height: 20px;
  }
  kbd {
    display: inline-block;
    min-width: 10px;
    margin-inline-end: 4px;
    padding: 0 5px;
    border: 1px solid var(--line2);
    border-radius: 3px;
    background: var(--paper);
    font: inherit;
    font-size: 11px;
    line-height: 18px;
    text-align: center;
  }
  /* The keys of the sheet, and those of the rule once it has the focus. */
  .side:focus-within .far,
  .side:not(:focus-within) .near {
    display: none;
  }
  .buttons {
    display: none;
    gap: 8px;
  }
  button {
    min-width: 44px;
    min-height: 44px;
    padding: 0 12px;
    border: 1px solid var(--line2);
    border-radius: 5px;
    background: var(--paper);
    color: var(--ink);
    font: inherit;
    white-space: nowrap;
    touch-action: manipulation;
  }
  button:hover {
    background: color-mix(in srgb, var(--ink) 7%, var(--paper));
  }
  button:disabled {
    opacity: 0.4;
  }
  .rule {
    cursor: ew-resize;
    touch-action: pan-y;
    border-radius: 3px;
  }
  :focus-visible {
    outline: 2px solid var(--accent);
    outline-offset: 2px;
  }
  /* The keys stand close above. */
  .rule:focus-visible {
    outline-offset: -2px;
  }
  svg {
    display: block;
    overflow: visible;
  }
  text {
    fill: var(--ink3);
    font-size: 12px;
  }
  .halo {
    stroke: var(--paper);
    stroke-width: 4px;
    stroke-linejoin: round;
    paint-order: stroke;
  }
  .line {
    fill: none;
    stroke: var(--ink);
    stroke-width: 1.25;
  }
  .pass {
    fill: color-mix(in srgb, var(--good) 26%, var(--paper));
  }
  .pass-edge {
    fill: none;
    stroke: var(--good);
  }
  .pass-name {
    fill: var(--good);
    font-weight: 600;
  }
  .before {
    fill: none;
    stroke: var(--ink3);
    stroke-width: 1.5;
    stroke-dasharray: 3 2;
  }
  .needle {
    fill: var(--accent);
    stroke: none;
  }
  .stem {
    stroke: var(--accent);
    stroke-width: 2.5;
  }
  @media (pointer: coarse) {
    .hints {
      display: none;
    }
    .buttons {
      display: flex;
    }
  }
  @container (width < 620px) {
    .dial {
      grid-template-columns: minmax(0, 1fr) auto;
      row-gap: 8px;
      padding-inline: 16px;
    }
    .paper {
      mask-image: linear-gradient(transparent 30px, #000 90px);
    }
    .side {
      display: contents;
    }
    .rule {
      grid-column: 1 / -1;
    }
    .hints {
      display: none;
    }
    .buttons {
      display: flex;
    }
    .keys {
      align-self: center;
    }
  }
  @container (width < 440px) {
    .dial {
      row-gap: 2px;
      padding-block: 6px;
    }
    .readout {
      display: contents;
    }
    .name {
      position: relative;
      grid-column: 1 / -1;
    }
    .number {
      position: relative;
      align-self: center;
      flex-wrap: wrap;
    }
    .number strong {
      font-size: 28px;
      line-height: 32px;
    }
    .was {
      margin-inline-start: 0;
    }
    button:disabled {
      display: none;
    }
  }
  @media (forced-colors: active) {
    .line {
      stroke: CanvasText;
    }
    .needle {
      fill: Highlight;
    }
    .stem {
      stroke: Highlight;
    }
    .pass {
      fill: none;
    }
    .pass-edge {
      stroke: CanvasText;
      stroke-dasharray: 2 2;
    }
    text,
    .pass-name {
      fill: CanvasText;
    }
    .halo {
      stroke: Canvas;
    }
    .before {
      stroke: CanvasText;
    }
  }
`;
