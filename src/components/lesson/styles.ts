import { css } from 'lit';

/** One column of text with the steps above and the way on below. */
export const lessonStyles = css`
  :host {
    display: block;
    font: 14px/20px var(--sans);
    color: var(--ink);
  }
  nav,
  form,
  .foot {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
    align-items: end;
  }
  .foot {
    margin-top: 20px;
    padding-top: 12px;
    border-top: 1px solid var(--line2);
  }
  .foot span {
    flex: 1;
  }
  nav button {
    min-width: 32px;
    padding: 0;
  }
  nav .answered {
    background: var(--accent-soft);
  }
  nav [aria-current] {
    border-color: var(--accent);
    font-weight: 600;
  }
  .place {
    margin: 12px 0 0;
    color: var(--ink2);
    font-size: 12.5px;
    line-height: 18px;
  }
  h3 {
    margin: 0 0 6px;
    font-size: 20px;
    line-height: 26px;
    font-weight: 500;
  }
  .why {
    margin: 14px 0 2px;
    font-size: 14px;
    line-height: 20px;
    font-weight: 600;
  }
  p {
    margin: 4px 0 10px;
    max-width: 68ch;
  }
  label {
    display: grid;
    gap: 2px;
    color: var(--ink2);
    font-size: 12.5px;
    line-height: 18px;
  }
  .asked {
    grid-template-columns: minmax(0, 1fr) auto;
    align-items: center;
    max-width: 52ch;
    padding: 3px 0;
    color: var(--ink);
    font-size: 14px;
  }
  input,
  select,
  button {
    font: 14px/20px var(--sans);
    min-height: 32px;
    box-sizing: border-box;
    color: var(--ink);
    background: var(--paper);
    border: 1px solid var(--ink3);
    border-radius: 5px;
    padding: 3px 10px;
  }
  input {
    width: 160px;
  }
  button {
    border-color: var(--line2);
    padding: 0 14px;
    cursor: pointer;
  }
  button:disabled {
    opacity: 0.4;
    cursor: default;
  }
  button.main {
    color: var(--on-accent);
    background: var(--accent);
    border-color: var(--accent);
  }
  dl {
    margin: 12px 0;
  }
  dl div {
    display: grid;
    grid-template-columns: minmax(0, 1fr) minmax(0, 1fr);
    gap: 12px;
    padding: 4px 0;
    border-bottom: 1px solid var(--line);
  }
  dl div:first-child {
    font-size: 18px;
    line-height: 26px;
    font-weight: 500;
  }
  dd {
    margin: 0;
  }
  .next {
    font-weight: 600;
  }
  :focus-visible {
    outline: 2px solid var(--accent);
    outline-offset: 2px;
  }
  h3:focus-visible {
    outline: 0;
  }
  @media (pointer: coarse), (max-width: 1023px) {
    input,
    select,
    button {
      min-height: 44px;
    }
    nav button {
      min-width: 44px;
    }
  }
`;
