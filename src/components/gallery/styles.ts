import { css } from 'lit';

/** A search line over cards that stand in groups; the rest as in all forms. */
export const galleryStyles = css`
  .search {
    display: flex;
    flex-wrap: wrap;
    gap: 8px 12px;
    align-items: center;
  }
  input[type='search'] {
    flex: 1 1 240px;
  }
  .count {
    margin: 6px 0 0;
    color: var(--ink2);
    font-size: 12.5px;
    line-height: 18px;
  }
  ul {
    list-style: none;
    margin: 0;
    padding: 0;
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(310px, 100%), 1fr));
    gap: 12px;
  }
  .card {
    position: relative;
    display: flex;
    flex-direction: column;
    min-width: 0;
    background: var(--paper);
    border: 1px solid var(--line2);
    border-radius: 5px;
    cursor: pointer;
  }
  .card:hover {
    border-color: var(--ink3);
  }
  .card:hover .words {
    background: color-mix(in srgb, var(--ink) 5%, var(--paper));
  }
  .words {
    flex: 1;
    padding: 8px 12px 10px;
    border-top: 1px solid var(--line2);
  }
  button.title {
    all: unset;
    font-weight: 600;
    cursor: pointer;
  }
  /* The whole card can be pressed. */
  .title::after {
    content: '';
    position: absolute;
    inset: 0;
  }
  .summary {
    margin: 0;
    color: var(--ink2);
    font-size: 12.5px;
    line-height: 18px;
  }
  .unseen {
    position: absolute;
    margin: 0;
    width: 1px;
    height: 1px;
    overflow: hidden;
    clip-path: inset(50%);
    white-space: nowrap;
  }
  .card:has(:focus-visible) {
    outline: 2px solid var(--accent);
    outline-offset: 2px;
  }
  button.title:focus-visible {
    outline: 0;
  }
`;
