import { css } from 'lit';

/** The frame: rail, sheet and dock on three paper tones, divided by hairlines. */
export const appStyles = css`
  :host {
    display: grid;
    grid-template:
      'bar bar bar' 48px 'rail sheet dock' minmax(0, 1fr) 'foot foot foot' 26px / 188px minmax(0, 1fr)
      clamp(340px, 23.6vw, 392px);
    height: 100dvh;
    background: var(--ground);
    color: var(--ink);
    font: 14px/20px var(--sans);
    font-variant-numeric: tabular-nums lining-nums;
  }
  /* On paper, what stands over the sheet to be printed stands alone. */
  @media print {
    :host {
      display: block;
      height: auto;
      background: none;
    }
    *:has(~ review-page) {
      display: none !important;
    }
  }
  top-bar {
    grid-area: bar;
  }
  sheet-rail {
    grid-area: rail;
    border-right: 1px solid var(--line2);
  }
  main {
    grid-area: sheet;
    display: flex;
    flex-direction: column;
    min-width: 0;
    min-height: 0;
    background: var(--paper);
  }
  .title {
    display: flex;
    align-items: end;
    justify-content: space-between;
    gap: 20px;
    padding: 16px 20px 10px;
  }
  .title h2 {
    font-size: 30px;
    line-height: 34px;
    letter-spacing: -0.012em;
    font-weight: 500;
    margin: 0;
  }
  .title p {
    margin: 2px 0 0;
    color: var(--ink2);
  }
  .tally {
    display: flex;
    gap: 18px;
    white-space: nowrap;
    margin: 0;
    align-items: center;
  }
  .tally span {
    display: inline-flex;
    align-items: center;
    gap: 6px;
    color: var(--ink2);
  }
  .tally b {
    font-size: 20px;
    line-height: 24px;
    font-weight: 600;
    color: var(--ink);
  }
  .tally .fail svg {
    color: var(--fail);
  }
  .tally .caution svg {
    color: var(--caution);
  }
  .tally .good svg {
    color: var(--good);
  }
  sheet-grid {
    flex: 1;
    min-height: 0;
    border-top: 1px solid var(--line2);
  }
  aside {
    grid-area: dock;
    border-left: 1px solid var(--line2);
    background: var(--panel);
    overflow: hidden;
    min-height: 0;
    min-width: 0;
  }
  footer.foot {
    grid-area: foot;
    display: flex;
    justify-content: space-between;
    gap: 20px;
    padding: 0 12px;
    align-items: center;
    border-top: 1px solid var(--line2);
    font-size: 12.5px;
    line-height: 18px;
    color: var(--ink2);
    white-space: nowrap;
    overflow: clip;
  }
  .notice {
    display: flex;
    gap: 12px;
    align-items: center;
    padding: 10px 20px;
    border-top: 1px solid var(--line2);
    border-left: 3px solid var(--line2);
    background: var(--panel);
  }
  .notice[role='alert'] {
    border-left-color: var(--caution);
  }
  .notice p {
    margin: 0;
    flex: 1;
  }
  .notice[role='alert'] svg {
    color: var(--caution);
  }
  /* A menu that is opened from elsewhere: no one can see its button, so no one is led there. */
  .floating {
    position: fixed;
    visibility: hidden;
  }
  @media (max-width: 1180px) {
    :host {
      grid-template: 'bar bar' 48px 'sheet dock' minmax(0, 1fr) 'foot foot' 26px / minmax(0, 1fr) 340px;
    }
    sheet-rail {
      display: none;
    }
    :host([drawer]) sheet-rail {
      display: flex;
      position: fixed;
      inset: 48px auto 0 0;
      width: 248px;
      z-index: 30;
    }
  }
  @media (max-width: 1023px) {
    :host {
      grid-template: 'bar' 56px 'sheet' minmax(416px, 3fr) 'dock' minmax(0, 2fr) / minmax(0, 1fr);
    }
    :host([drawer]) sheet-rail {
      inset: 56px auto 0 0;
    }
    footer.foot,
    .wide {
      display: none !important;
    }
    aside {
      border-left: 0;
      border-top: 1px solid var(--line2);
    }
    .title {
      padding: 10px 16px 6px;
    }
    .title h2 {
      font-size: 24px;
      line-height: 28px;
    }
    sheet-grid {
      min-height: 160px;
    }
    /* The sheet has no room to give; a message lies over the foot of the page. */
    .notice {
      position: fixed;
      inset: auto 0 0;
      z-index: 31;
      padding: 10px 16px;
      border-bottom: 1px solid var(--line2);
    }
  }
  @media (max-width: 600px) {
    :host {
      grid-template-rows: 56px minmax(min-content, 7fr) minmax(0, 3fr);
    }
    .title {
      flex-wrap: wrap;
      align-items: baseline;
      gap: 0 16px;
      padding-block: 6px 4px;
    }
    .title h2 {
      font-size: 20px;
      line-height: 24px;
    }
    .title div p {
      display: none;
    }
    .tally {
      gap: 10px;
      font-size: 12.5px;
    }
    .tally b {
      font-size: 16px;
      line-height: 20px;
    }
    .tally span {
      gap: 4px;
    }
  }
  /* Enlarged, or on its side: one thing below the other, each with a page of its own, and the whole is scrolled. */
  @media (max-width: 1023px) and (max-height: 620px) {
    :host {
      grid-template-rows: 56px auto 100dvh;
      height: auto;
    }
    sheet-grid {
      flex: none;
      height: 80dvh;
      /* What stands above may still grow. */
      scroll-margin: 20px;
    }
  }
`;
