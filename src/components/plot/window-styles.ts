import { css } from 'lit';

/** Bars and bands of the shared window. */
export const windowStyles = css`
  /* The outcome has a line of its own; title and buttons share one. */
  .head {
    flex-wrap: wrap;
    row-gap: 0;
  }
  h2 {
    flex: 1;
  }
  .outcome {
    flex-basis: 100%;
    font-size: 12.5px;
    line-height: 18px;
    font-weight: 600;
  }
  .outcome.good {
    color: var(--good);
  }
  .outcome.caution {
    color: var(--caution);
  }
  .outcome.fail {
    color: var(--fail);
  }
  .crosshair {
    inset: 0;
  }
  .bar {
    fill: currentColor;
    fill-opacity: 0.3;
  }
  .bar.loose {
    fill-opacity: 0.12;
  }
  .end-line {
    stroke: currentColor;
    stroke-width: 2;
  }
  .end-line.loose {
    stroke-width: 1.25;
    stroke-dasharray: 2 2;
  }
  .end-line.was {
    stroke: var(--ghost);
    stroke-width: 1.5;
    stroke-dasharray: 3 2.5;
  }
  .hatch-line {
    stroke: var(--ink3);
    stroke-opacity: 0.3;
  }
  .band {
    fill: var(--good-bg);
    stroke: var(--good);
  }
  .band.loose {
    fill: none;
    stroke: var(--caution);
    stroke-dasharray: 4 3;
  }
  .band.gap {
    fill: var(--fail-bg);
    stroke: var(--fail);
  }
  .rule {
    fill: var(--ink);
    font-size: 12px;
  }
  .rule.hatched {
    stroke: var(--panel);
    stroke-width: 3.5px;
    stroke-linejoin: round;
    paint-order: stroke;
  }
  .rule.binding {
    font-weight: 600;
  }
  @media (forced-colors: active) {
    .band,
    .band.gap {
      fill: none;
      stroke: CanvasText;
    }
    .rule {
      fill: CanvasText;
    }
    .rule.hatched {
      stroke: Canvas;
    }
    .bar,
    .end-line {
      fill: CanvasText;
      stroke: CanvasText;
    }
  }
`;
