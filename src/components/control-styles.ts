import { css } from 'lit';

/** How the controls of the frame look when they are pointed at, held back, switched on, or have the focus. */
export const controlStyles = css`
  button:hover:not(:disabled) {
    background: color-mix(in srgb, var(--ink) 7%, transparent);
  }
  button:disabled {
    opacity: 0.4;
    cursor: default;
  }
  button[aria-pressed='true'] {
    border-color: var(--accent);
    color: var(--accent);
  }
  :focus-visible {
    outline: 2px solid var(--accent);
    outline-offset: 2px;
  }
  svg {
    width: 18px;
    height: 18px;
    flex: none;
  }
`;
