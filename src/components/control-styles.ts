import { css } from 'lit';

/** How the controls of the frame look: bare or framed, pointed at, held back, switched on, or with the focus. */
export const controlStyles = css`
  button {
    font: inherit;
    color: var(--ink);
    background: none;
    border: 1px solid transparent;
    border-radius: 5px;
    min-height: 32px;
    min-width: 32px;
    padding: 0 6px;
    display: inline-flex;
    gap: 8px;
    align-items: center;
    justify-content: center;
    cursor: pointer;
    white-space: nowrap;
  }
  .framed {
    background: var(--paper);
    border-color: var(--line2);
    padding: 0 12px;
  }
  @media (max-width: 1023px) {
    button {
      min-height: 44px;
      min-width: 44px;
    }
  }
  :enabled:hover {
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
