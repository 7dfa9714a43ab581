import { css } from 'lit';

/** What stands in a cell. Cells are placed by left and top alone: no transform and no containment of their own, which
 *  would double a repaint. */
export const cellStyles = css`
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
    contain: strict;
    cursor: cell;
  }
  .section .cell {
    border-right-color: transparent;
  }
  .cell.heading {
    font-size: 15px;
    font-weight: 600;
    overflow: visible;
    contain: none;
    align-items: end;
    padding-bottom: 5px;
    z-index: 1;
  }
  .heading .words,
  .note .words {
    flex: none;
    overflow: visible;
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
    contain: none;
    z-index: 1;
    border-right-color: transparent;
    font-size: 12.5px;
  }
  .cell.number {
    justify-content: flex-end;
    padding-inline: 4px;
    gap: 4px;
  }
  /* Gives way to a number that is longer than the rest of its cell. */
  .unit {
    flex: 0 1 38px;
    min-width: min-content;
    color: var(--ink2);
    font-size: 12.5px;
    font-stretch: 90%;
    overflow: visible;
  }
  .unit.long {
    flex: none;
    min-width: 38px;
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
    flex: 0 1000 auto;
    min-width: 0;
  }
  /* A sliver of it would say nothing; the title of the cell and the list of what changed have it. */
  .number[data-narrow] > .was {
    display: none;
  }
  /* The reason gives way to it. */
  .chip + .was {
    flex: none;
  }
  .words {
    overflow: clip;
    text-overflow: ellipsis;
    min-width: 0;
  }
  /* A reason that is longer than its cell has a second line. */
  .reason {
    color: var(--ink2);
    font-size: 12px;
    font-stretch: 85%;
    line-height: 13px;
    white-space: normal;
    overflow: hidden;
    display: -webkit-box;
    -webkit-box-orient: vertical;
    -webkit-line-clamp: 2;
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
  .sign {
    display: contents;
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
`;
