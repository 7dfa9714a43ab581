const KEY = 'octavo-tour';

/** Whether to offer the tour unasked: once on a device, and never again whatever was answered. */
export function offersTour(): boolean {
  if (localStorage.getItem(KEY) !== null) return false;
  localStorage.setItem(KEY, 'offered');
  return true;
}
