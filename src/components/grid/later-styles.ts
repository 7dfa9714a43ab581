import { css } from 'lit';

/** What comes after the first paint. In rows whose words need more than a line all stands at their top, and a reason
 *  beside its verdict, or below it where there is no room. */
export const laterStyles = css`
  /* No line of the sheet goes through them. */
  .note .words {
    align-self: stretch;
    line-height: 27px;
    background: var(--paper);
  }
  .number[data-wide] {
    justify-content: flex-start;
  }
  .number[data-wide] .value {
    min-width: 48px;
    text-align: right;
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
  .rowhead.tall {
    align-items: start;
    padding-top: 6px;
  }
  .tall .cell {
    align-items: start;
    padding-block: var(--above, 3px);
  }
  .tall .words {
    overflow: visible;
    overflow-wrap: break-word;
    white-space: normal;
    line-height: 18px;
    margin-top: 1px;
  }
  .tall .verdict {
    flex-wrap: wrap;
    align-content: start;
    row-gap: 0;
  }
  .tall .reason {
    display: block;
    flex: 1 1 200px;
    overflow: visible;
    line-height: 14px;
    margin-top: 3px;
  }
  @media (pointer: coarse) {
    .row {
      --above: 9px;
    }
  }
`;
