import { css } from 'lit';

/** The form on the left, the picture beside it as long as there is room. */
export const plotFormStyles = css`
  form {
    display: grid;
    grid-template-columns: minmax(0, 1fr) minmax(0, 1fr);
    gap: 0 28px;
    align-items: start;
  }
  .picture {
    position: sticky;
    top: 0;
    min-height: 230px;
    padding: 10px 12px;
    background: var(--panel);
    border: 1px solid var(--line);
    border-radius: 5px;
  }
  .rows,
  .pairs {
    display: grid;
    gap: 10px 12px;
    grid-template-columns: repeat(3, minmax(0, 1fr));
    align-items: start;
  }
  .pairs {
    grid-template-columns: repeat(2, minmax(0, 1fr));
  }
  .pairs.axes {
    grid-template-columns: repeat(4, minmax(0, 1fr));
  }
  .field {
    display: grid;
    gap: 4px;
  }
  label {
    display: flex;
    gap: 8px;
    align-items: center;
    color: var(--ink2);
    font-size: 12.5px;
    line-height: 18px;
  }
  label svg {
    width: 36px;
    height: 8px;
    fill: none;
  }
  fieldset {
    min-width: 0;
    margin: 0;
    padding: 8px 0 12px;
    border: 0;
    border-top: 1px solid var(--line);
  }
  legend {
    padding: 0 8px 0 0;
    font-weight: 600;
    line-height: 20px;
  }
  h3 {
    margin: 18px 0 2px;
  }
  .hint {
    margin: 0 0 6px;
  }
  .bar .hint {
    flex: 1 1 200px;
    margin: 0;
  }
  fieldset {
    position: relative;
  }
  button.out {
    position: absolute;
    inset-block-start: -26px;
    inset-inline-end: 0;
    padding: 0 0 0 10px;
    border: 0;
    color: var(--accent);
    background: var(--paper);
  }
  .note {
    color: var(--caution);
  }
  [aria-invalid='true'] {
    border-color: var(--fail) !important;
  }
  /* The answer is always at hand; what has the focus is not below it. */
  .end {
    grid-column: 1 / -1;
    position: sticky;
    bottom: -20px;
    display: flex;
    flex-wrap: wrap;
    gap: 8px 12px;
    align-items: center;
    margin: 16px 0 -20px;
    padding: 12px 0;
    background: var(--paper);
    border-top: 1px solid var(--line2);
  }
  input,
  select,
  button {
    scroll-margin-bottom: 72px;
  }
  .end p {
    margin: 0;
  }
  @media (pointer: coarse), (max-width: 1023px) {
    fieldset {
      padding-block-end: 24px;
    }
    button.out {
      inset-block-start: -38px;
    }
  }
  @media (max-width: 900px) {
    form {
      grid-template-columns: minmax(0, 1.4fr) minmax(0, 1fr);
    }
  }
  @media (max-width: 760px) {
    form {
      grid-template-columns: minmax(0, 1fr);
    }
    .picture {
      position: static;
      margin-top: 16px;
    }
  }
  @media (max-width: 500px) {
    .rows,
    .pairs.axes {
      grid-template-columns: repeat(2, minmax(0, 1fr));
    }
  }
`;
