/** A text without its line breaks, and without the room around them. */
export const oneLine = (text: string): string => text.replaceAll(/\s*[\r\n]+\s*/g, ' ');
