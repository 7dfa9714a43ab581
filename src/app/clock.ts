/** The time of day, as people here write it. */
export const clock = (time: number | string): string =>
  new Date(time).toLocaleTimeString(undefined, { hour: '2-digit', minute: '2-digit' });
