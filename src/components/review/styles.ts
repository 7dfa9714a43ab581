import { css } from 'lit';

/** A page that reads alike on the screen and on paper of 210 by 297 mm: what is drawn for the one fits the other. */
export const reviewStyles = css`
  :host {
    display: block;
    container-type: inline-size;
    max-width: 688px;
    margin: 0 auto;
    color: var(--ink);
    font: 13.5px/19px var(--sans);
    font-variant-numeric: tabular-nums lining-nums;
    overflow-wrap: anywhere;
  }
  header {
    display: grid;
    gap: 2px;
    padding-bottom: 10px;
    border-bottom: 2px solid var(--ink);
  }
  h2 {
    margin: 0;
    font-size: 22px;
    line-height: 28px;
    font-weight: 500;
    letter-spacing: -0.01em;
  }
  h3 {
    margin: 18px 0 6px;
    padding-bottom: 3px;
    border-bottom: 1px solid var(--line2);
    font-size: 15px;
    line-height: 20px;
    font-weight: 600;
    break-after: avoid;
  }
  h4 {
    margin: 0 0 2px;
    color: var(--ink2);
    font-size: 12.5px;
    line-height: 17px;
    font-weight: 600;
    break-after: avoid;
  }
  p {
    margin: 0;
  }
  .quiet {
    color: var(--ink2);
  }
  .tally {
    display: flex;
    flex-wrap: wrap;
    gap: 4px 14px;
    margin-top: 4px;
  }
  .tally span {
    display: inline-flex;
    gap: 5px;
    align-items: center;
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
  .icon {
    flex: none;
    width: 16px;
    height: 16px;
    stroke-width: 1.5;
  }
  ul {
    margin: 0;
    padding: 0;
    list-style: none;
  }
  .verdicts li {
    display: grid;
    grid-template-columns: 16px minmax(0, 1fr) minmax(0, 116px);
    gap: 0 10px;
    padding: 5px 0;
    border-bottom: 1px solid var(--line);
    break-inside: avoid;
  }
  .verdicts .icon {
    margin-top: 1px;
  }
  .limits {
    color: var(--ink2);
    font-size: 12px;
    line-height: 17px;
    text-align: end;
  }
  .items li {
    padding: 1px 0 1px 14px;
    text-indent: -14px;
    break-inside: avoid;
  }
  .items li::before {
    content: '–';
    display: inline-block;
    width: 14px;
    text-indent: 0;
  }
  .plots {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(320px, 100%), 1fr));
    gap: 14px 16px;
  }
  .plots > * {
    min-width: 0;
    break-inside: avoid;
  }
  .sections {
    columns: 2 300px;
    column-gap: 24px;
  }
  /* Room below a table that is not lost where a column ends. */
  .sections > div {
    padding-bottom: 12px;
  }
  .sections .wide {
    column-span: all;
  }
  table {
    width: 100%;
    border-collapse: collapse;
    font-size: 12.5px;
    line-height: 17px;
  }
  tr {
    break-inside: avoid;
  }
  th,
  td {
    padding: 2px 0 2px 10px;
    border-bottom: 1px solid var(--line);
    font-weight: 400;
    text-align: end;
    vertical-align: baseline;
  }
  thead th {
    color: var(--ink2);
    font-size: 12px;
  }
  td,
  thead th {
    overflow-wrap: normal;
  }
  tr > :first-child {
    min-width: 90px;
    padding-inline-start: 0;
    text-align: start;
  }
  td:not(.long) {
    white-space: nowrap;
  }
  td.long {
    text-align: start;
    color: var(--ink2);
  }
  sup {
    margin-inline-start: 2px;
    color: var(--ink2);
    font-size: 10px;
    line-height: 0;
  }
  .heard {
    position: absolute;
    width: 1px;
    height: 1px;
    overflow: hidden;
    clip-path: inset(50%);
    white-space: nowrap;
  }
  @container (max-width: 480px) {
    table {
      font-size: 11.5px;
      line-height: 15px;
    }
    th,
    td {
      padding-inline-start: 6px;
    }
    td:not(.long) {
      white-space: normal;
    }
    tr > :first-child {
      min-width: 72px;
    }
    .verdicts li {
      grid-template-columns: 16px minmax(0, 1fr);
    }
    .limits {
      grid-column: 2;
      text-align: start;
    }
  }
`;
