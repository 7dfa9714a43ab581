import { css } from 'lit';

/** Ink, lines and hatches of every plot. Curves are told apart by colour and by line. */
export const pictureStyles = css`
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
    stroke-opacity: 0.34;
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
  @media (forced-colors: active) {
    .curve,
    .ring,
    .leader,
    .ring.broken,
    .leader.broken {
      stroke: CanvasText;
    }
    .ghost,
    .edge {
      stroke: GrayText;
    }
    .minor {
      stroke: none;
    }
    .major {
      stroke: GrayText;
      stroke-opacity: 0.4;
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
    .dot,
    .name,
    .reading,
    .reading.small,
    .reading.broken,
    .limit-name {
      fill: CanvasText;
    }
    .name,
    .reading,
    .limit-name {
      stroke: Canvas;
    }
    .flag-text {
      fill: HighlightText;
    }
  }
`;
