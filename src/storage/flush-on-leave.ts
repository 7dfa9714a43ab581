import type { Autosave } from './autosave.ts';

/** Saves what is unsaved when the page is hidden, keeps it when the page goes, and asks before closing where saving has failed or is held up
 *  by another tab. Gives the way to stop. */
export function flushOnLeave(autosave: Autosave, page: Window): () => void {
  const leave = (): void => void autosave.leave();
  const hidden = (): void => {
    if (page.document.visibilityState === 'hidden') void autosave.flush();
  };
  const ask = (event: BeforeUnloadEvent): void => {
    const { state } = autosave.status;
    if (autosave.isDirty && (state === 'failed' || state === 'conflict')) event.preventDefault();
    else leave();
  };
  page.addEventListener('pagehide', leave);
  page.addEventListener('beforeunload', ask);
  page.document.addEventListener('visibilitychange', hidden);
  return () => {
    page.removeEventListener('pagehide', leave);
    page.removeEventListener('beforeunload', ask);
    page.document.removeEventListener('visibilitychange', hidden);
  };
}
