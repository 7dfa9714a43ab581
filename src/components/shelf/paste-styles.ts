import { css } from 'lit';

/** What was understood of a datasheet, row by row beside the text that it comes from. */
export const pasteStyles = css`
  label.text {
    display: block;
    margin: 12px 0;
  }
  section {
    margin-top: 16px;
    padding-top: 4px;
    border-top: 1px solid var(--line2);
  }
  table {
    width: 100%;
    border-collapse: collapse;
    margin: 8px 0;
  }
  th,
  td {
    padding: 4px 8px 4px 0;
    border-bottom: 1px solid var(--line);
    text-align: start;
    vertical-align: top;
    font-weight: 400;
  }
  thead th {
    color: var(--ink2);
    font-size: 12.5px;
  }
  tbody th {
    white-space: nowrap;
  }
  .found {
    color: var(--ink2);
    font: 12.5px/18px var(--mono);
    overflow-wrap: anywhere;
  }
  .open {
    color: var(--caution);
  }
  select {
    max-width: 260px;
    margin-top: 4px;
  }
  @media (max-width: 640px) {
    .found {
      font-size: 11px;
    }
    tbody th {
      white-space: normal;
    }
    td:nth-child(2) {
      width: 45%;
    }
  }
  .name {
    max-width: 340px;
    display: block;
    margin: 8px 0;
  }
`;
