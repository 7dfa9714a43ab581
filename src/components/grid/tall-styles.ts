import { css } from 'lit';

/** Rows whose words need more than a line: all stands at their top, and a reason runs on below its verdict. */
export const tallStyles = css`
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
    display: block;
  }
  .tall .verdict > .chip,
  .tall .verdict > .was {
    float: left;
    margin-right: 6px;
  }
  .tall .reason {
    display: block;
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
