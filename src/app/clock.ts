const hours = new Intl.DateTimeFormat(undefined, { hour: '2-digit', minute: '2-digit' });

/** The time of day, as people here write it. */
export const clock = (time: number | string): string => hours.format(new Date(time));

const days = new Intl.DateTimeFormat(undefined, { day: 'numeric', month: 'short', hour: '2-digit', minute: '2-digit' });

/** The same with its day. */
export const moment = (time: number): string => days.format(time);
