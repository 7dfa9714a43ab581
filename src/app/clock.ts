const hours = new Intl.DateTimeFormat(undefined, { hour: '2-digit', minute: '2-digit' });

/** The time of day, as people here write it. */
export const clock = (time: number | string): string => hours.format(new Date(time));
