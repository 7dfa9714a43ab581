/** A key of the app; those of the grid are in components/grid/keys.ts, what they do in words in key-words.ts. */
export interface KeyBinding {
  readonly key: string;
  readonly control?: true;
  readonly shift?: true;
  readonly action: ActionName;
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
  | 'ask'
  | 'add-plot';

export const keyBindings: readonly KeyBinding[] = [
  { key: 'z', control: true, action: 'undo' },
  { key: 'z', control: true, shift: true, action: 'redo' },
  { key: 'y', control: true, action: 'redo' },
  { key: 's', control: true, action: 'save-file' },
  { key: 'o', control: true, action: 'open-file' },
  { key: 'k', control: true, action: 'go-to' },
  { key: 'g', control: true, action: 'gallery' },
  { key: 'b', control: true, action: 'pin' },
  { key: 'b', control: true, shift: true, action: 'compare' },
  { key: 'p', control: true, action: 'review' },
  { key: 'i', control: true, action: 'open-cell' },
  { key: 'F8', action: 'shelf' },
  { key: 'F8', shift: true, action: 'shortlist' },
  {
    key: 'f',
    control: true,
    shift: true,
    action: 'ask',
  },
  { key: 'F9', action: 'add-plot' },
  { key: 'F1', action: 'guide' },
  { key: '/', control: true, action: 'keys' },
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
