import { css } from 'lit';

/** One column of text with the steps above and the way on below; the rest as in all forms. */
export const lessonStyles = css`
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
  .guess input {
    width: 160px;
  }
  select {
    width: auto;
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
  h3:focus-visible {
    outline: 0;
  }
  @media (pointer: coarse), (max-width: 1023px) {
    nav button {
      min-width: 44px;
    }
  }
`;
