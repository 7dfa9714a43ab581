import { css } from 'lit';

/** Bars, points and shapes; told apart by depth and outline too, not by colour alone. */
export const drawingStyles = css`
  .crosshair {
    inset: 0;
  }
  .readout dl {
    grid-template-columns: auto auto;
  }
  .part {
    fill: currentColor;
    fill-opacity: 0.34;
    stroke: var(--panel);
    stroke-width: 1;
  }
  .part.n1 {
    fill-opacity: 0.24;
  }
  .part.n3 {
    fill-opacity: 0.1;
    stroke: currentColor;
  }
  .part.n4 {
    fill-opacity: 0.6;
  }
  .inside,
  .key,
  .row-name,
  .total {
    fill: var(--ink);
    font-size: 12px;
  }
  .row-name,
  .key {
    fill: var(--ink2);
  }
  .total {
    font-weight: 600;
    stroke: var(--panel);
    stroke-width: 3px;
    stroke-linejoin: round;
    paint-order: stroke;
  }
  .beaten {
    fill: var(--panel);
    stroke: currentColor;
    stroke-width: 1.5;
  }
  .front {
    fill: none;
    stroke: var(--ink3);
    stroke-dasharray: 3 3;
  }
  .shape {
    fill: currentColor;
    fill-opacity: 0.14;
    stroke: currentColor;
    stroke-width: 1.5;
  }
  .shape.over {
    stroke: var(--fail);
    stroke-width: 2.5;
    stroke-dasharray: 4 2;
  }
  .centre {
    fill: none;
    stroke: var(--ink3);
    stroke-dasharray: 8 2 2 2;
  }
  .table th:first-child {
    text-align: start;
  }
  @media (forced-colors: active) {
    .shape,
    .part,
    .beaten,
    .centre,
    .front {
      stroke: CanvasText;
    }
    .inside,
    .key,
    .row-name,
    .total {
      fill: CanvasText;
    }
  }
`;
