import { css } from 'lit';

/** What the form and the answers of the page of questions have in common, beside the shelf's fields and buttons. */
export const askStyles = css`
  :host {
    min-width: 0;
  }
  .fields {
    display: flex;
    flex-wrap: wrap;
    gap: 8px 16px;
    align-items: end;
    margin: 12px 0;
  }
  .fields label,
  .line label {
    display: grid;
    gap: 4px;
    color: var(--ink2);
    font-size: 12.5px;
    line-height: 18px;
  }
  .fields select {
    max-width: 320px;
  }
  .fields .short {
    width: 104px;
  }
  .fields .values {
    width: 224px;
  }
  .fields label.tick {
    display: flex;
    align-items: center;
    min-height: 32px;
  }
  .line {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
    align-items: end;
  }
  .line label {
    flex: 1 1 260px;
  }
  fieldset {
    min-width: 0;
    margin: 0;
    padding: 0;
    border: 0;
  }
  fieldset .bar {
    align-items: end;
  }
  legend {
    padding: 0;
    color: var(--ink2);
    font-size: 12.5px;
    line-height: 18px;
  }
  .kinds {
    display: flex;
    flex-wrap: wrap;
    gap: 0 4px;
    margin-top: 16px;
    border-bottom: 1px solid var(--line2);
  }
  .kinds label {
    display: flex;
    align-items: center;
    min-height: 36px;
    padding: 0 8px;
    border-bottom: 3px solid transparent;
    color: var(--ink2);
    cursor: pointer;
  }
  .kinds label:has(:checked) {
    border-color: var(--accent);
    color: var(--ink);
    font-weight: 600;
  }
  .kinds label:focus-within {
    outline: 2px solid var(--accent);
    outline-offset: -2px;
  }
  .kinds input {
    position: absolute;
    opacity: 0;
    pointer-events: none;
  }
  .table {
    max-height: 320px;
    margin-top: 8px;
    overflow: auto;
    border: 1px solid var(--line);
  }
  table {
    width: 100%;
    border-collapse: collapse;
  }
  th,
  td {
    padding: 3px 10px;
    border-bottom: 1px solid var(--line);
    text-align: start;
    font-weight: 400;
  }
  thead th {
    position: sticky;
    top: 0;
    background: var(--panel);
    color: var(--ink2);
    font-weight: 600;
    font-size: 12.5px;
  }
  .number {
    text-align: end;
    white-space: nowrap;
  }
  .found {
    margin: 8px 0;
    padding: 0;
    list-style: none;
  }
  .found li {
    display: flex;
    flex-wrap: wrap;
    gap: 4px 12px;
    align-items: center;
    padding: 6px 0;
    border-bottom: 1px solid var(--line);
  }
  .bars {
    display: grid;
    grid-template-columns: minmax(0, max-content) minmax(60px, 240px) auto;
    gap: 4px 12px;
    align-items: center;
    justify-content: start;
  }
  .bars svg {
    display: block;
    width: 100%;
    height: 10px;
    background: var(--panel);
  }
  .bars rect {
    fill: var(--ink2);
  }
  .bars .good {
    fill: var(--good);
  }
  .bars .caution {
    fill: var(--caution);
  }
  .bars .fail,
  .bars .problem {
    fill: var(--fail);
  }
  button.link {
    min-height: 24px;
  }
  .tree {
    padding-inline-start: 0;
    list-style: none;
  }
  .tree ul {
    padding-inline-start: 18px;
    border-inline-start: 1px solid var(--line2);
    list-style: none;
  }
  progress {
    width: 160px;
    accent-color: var(--accent);
  }
  .said {
    min-height: 32px;
  }
  details {
    margin-top: 12px;
    border-top: 1px solid var(--line);
  }
  summary {
    padding: 6px 0;
    cursor: pointer;
  }
  @media (max-width: 500px) {
    .bars {
      grid-template-columns: minmax(0, 1fr) 72px auto;
    }
    .fields select {
      max-width: 100%;
    }
    .fields label:has(select) {
      flex: 1 1 100%;
      min-width: 0;
    }
  }
`;
