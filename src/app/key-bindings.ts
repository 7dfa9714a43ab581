/** A key of the app (those of the grid are in components/grid/keys.ts), as a row of the page of keys. */
export interface KeyBinding {
  readonly key: string;
  readonly control?: true;
  readonly shift?: true;
  readonly action: ActionName;
  readonly words: string;
}

export type ActionName =
  | 'undo'
  | 'redo'
  | 'save-file'
  | 'open-file'
  | 'go-to'
  | 'gallery'
  | 'guide'
  | 'pin'
  | 'keys'
  | 'open-cell'
  | 'review'
  | 'compare'
  | 'shelf'
  | 'shortlist'
  | 'ask';

export const keyBindings: readonly KeyBinding[] = [
  { key: 'z', control: true, action: 'undo', words: 'Undo' },
  { key: 'z', control: true, shift: true, action: 'redo', words: 'Redo' },
  { key: 'y', control: true, action: 'redo', words: 'Redo' },
  { key: 's', control: true, action: 'save-file', words: 'Save a copy to a file' },
  { key: 'o', control: true, action: 'open-file', words: 'Open a file' },
  { key: 'k', control: true, action: 'go-to', words: 'Go to a cell or a name' },
  { key: 'g', control: true, action: 'gallery', words: 'Starter sheets: begin a new document' },
  { key: 'b', control: true, action: 'pin', words: 'Pin the baseline, or let it go' },
  { key: 'b', control: true, shift: true, action: 'compare', words: 'Compare with the baseline or another sheet' },
  { key: 'p', control: true, action: 'review', words: 'Review page: to print, or to copy as text' },
  { key: 'i', control: true, action: 'open-cell', words: 'Open the cell in full' },
  { key: 'F8', action: 'shelf', words: 'Driver shelf: put another driver where the selection is' },
  { key: 'F8', shift: true, action: 'shortlist', words: 'Shortlist: which drivers go together under your limits' },
  {
    key: 'f',
    control: true,
    shift: true,
    action: 'ask',
    words: 'Ask the sheet: which value gives this, the best, the cheapest change, how sure, what drives it',
  },
  { key: 'F1', action: 'guide', words: 'Function guide' },
  { key: '/', control: true, action: 'keys', words: 'This list of keys' },
];

/** The action that a key press asks for. Command does what Control does on a Mac. */
export const actionOf = (event: KeyboardEvent): ActionName | undefined =>
  keyBindings.find(
    (binding) =>
      binding.key.toLowerCase() === event.key.toLowerCase() &&
      Boolean(binding.control) === (event.ctrlKey || event.metaKey) &&
      Boolean(binding.shift) === event.shiftKey &&
      !event.altKey,
  )?.action;
