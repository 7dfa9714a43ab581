import { css } from 'lit';

/** A list of things with their figures: a row each, opened by the link in its head. Figures of class `rest` have no room on a
 *  tablet, no `figure` has any on a narrow page, where a line of class `brief` stands in the head instead. */
export const listStyles = css`
  table {
    width: 100%;
    border-collapse: collapse;
  }
  th,
  td {
    padding: 4px 8px;
    border-bottom: 1px solid var(--line);
    font-weight: 400;
  }
  thead th {
    color: var(--ink2);
    font-size: 12.5px;
  }
  th button.link {
    font-weight: 500;
  }
  tbody tr:focus-within {
    background: var(--accent-soft);
  }
  .brief {
    display: none;
  }
  @media (max-width: 1023px) {
    .rest {
      display: none;
    }
  }
  @media (max-width: 640px) {
    .figure {
      display: none;
    }
    .brief {
      display: block;
    }
    th,
    td {
      padding: 6px 4px;
    }
  }
`;
