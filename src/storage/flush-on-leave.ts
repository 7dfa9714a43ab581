import type { Autosave } from './autosave.ts';

/** Saves what is unsaved when the page is hidden or closed, and asks before closing where saving has failed or is held up
 *  by another tab. Gives the way to stop. */
export function flushOnLeave(autosave: Autosave, page: Window): () => void {
  const flush = (): void => void autosave.flush();
  const hidden = (): void => {
    if (page.document.visibilityState === 'hidden') flush();
  };
  const ask = (event: BeforeUnloadEvent): void => {
    const { state } = autosave.status;
    if (autosave.isDirty && (state === 'failed' || state === 'conflict')) event.preventDefault();
    else flush();
  };
  page.addEventListener('pagehide', flush);
  page.addEventListener('beforeunload', ask);
  page.document.addEventListener('visibilitychange', hidden);
  return () => {
    page.removeEventListener('pagehide', flush);
    page.removeEventListener('beforeunload', ask);
    page.document.removeEventListener('visibilitychange', hidden);
  };
}
