import { acceptCompletion, autocompletion, completionKeymap, completionStatus } from '@codemirror/autocomplete';
import { defaultKeymap, history, historyKeymap } from '@codemirror/commands';
import { EditorState, StateEffect, StateField, type Range } from '@codemirror/state';
import { Decoration, EditorView, keymap, type DecorationSet } from '@codemirror/view';
import type { Suggestions } from './suggestions.ts';

/** Characters drawn in a colour, or underlined for what is wrong or doubtful with them. */
export interface Mark {
  readonly from: number;
  readonly to: number;
  /** A reference: its place in the palette. */
  readonly index?: number;
  readonly level?: 'error' | 'doubt';
}

export interface EditorHooks {
  readonly label: () => string;
  readonly changed: (text: string, position: number, byReader: boolean) => void;
  readonly commit: (move: 'down' | 'up' | 'left' | 'right') => void;
  readonly cancel: () => void;
  readonly guide: () => void;
  readonly suggest: (text: string, position: number) => Suggestions | undefined;
}

const setMarks = StateEffect.define<readonly Mark[]>();

const marksField = StateField.define<DecorationSet>({
  create: () => Decoration.none,
  update(held, transaction) {
    let marks = held.map(transaction.changes);
    for (const effect of transaction.effects) {
      if (effect.is(setMarks)) marks = Decoration.set(effect.value.flatMap(decorate), true);
    }
    return marks;
  },
  provide: (field) => EditorView.decorations.from(field),
});

function decorate({ from, to, index, level }: Mark): Range<Decoration>[] {
  if (to <= from) return [];
  const look = index === undefined ? `finding-${level ?? 'doubt'}` : `reference-${String(index)}`;
  return [Decoration.mark({ class: look }).range(from, to)];
}

/** One line of text with the keys of a cell: Enter and Tab commit, Escape puts back, F1 asks the guide. */
export function createEditor(parent: HTMLElement, root: ShadowRoot, hooks: EditorHooks): EditorView {
  const run = (act: () => void) => () => {
    act();
    return true;
  };
  const commit = (move: 'down' | 'up' | 'left' | 'right') => run(() => hooks.commit(move));
  return new EditorView({
    parent,
    root,
    state: EditorState.create({
      extensions: [
        marksField,
        history(),
        EditorState.transactionFilter.of((transaction) => (transaction.newDoc.lines > 1 ? [] : transaction)),
        EditorView.contentAttributes.of(() => ({ 'aria-label': hooks.label(), spellcheck: 'false' })),
        autocompletion({
          icons: false,
          defaultKeymap: false,
          override: [
            ({ state, pos }) => {
              const found = hooks.suggest(state.doc.toString(), pos);
              if (!found) return null;
              const options = found.options.map(({ label, insert, detail, kind }) => ({
                label,
                apply: insert ?? label,
                type: kind,
                ...(detail !== undefined && { detail }),
              }));
              return { from: found.from, options };
            },
          ],
        }),
        keymap.of([
          // A list that is still being made must not swallow the key.
          { key: 'Escape', run: (view) => !isChoosing(view) && run(hooks.cancel)() },
          { key: 'Tab', run: acceptCompletion },
          ...completionKeymap,
          { key: 'Enter', run: commit('down'), shift: commit('up') },
          { key: 'Tab', run: commit('right'), shift: commit('left') },
          { key: 'F1', run: run(hooks.guide) },
          ...historyKeymap,
          ...defaultKeymap,
        ]),
        EditorView.updateListener.of(({ docChanged, selectionSet, state, transactions }) => {
          if (!docChanged && !selectionSet) return;
          const byReader = transactions.some(
            (each) => each.docChanged && !each.effects.some((effect) => effect.is(setMarks)),
          );
          hooks.changed(state.doc.toString(), state.selection.main.head, byReader);
        }),
      ],
    }),
  });
}

/** Puts a text in place of all there is, as given and not as typed. */
export function putText(view: EditorView, text: string): void {
  const line = text.replaceAll(/\s*\n\s*/g, ' ');
  view.dispatch({
    changes: { from: 0, to: view.state.doc.length, insert: line },
    selection: { anchor: line.length },
    effects: setMarks.of([]),
  });
}

export const putMarks = (view: EditorView, marks: readonly Mark[]): void => {
  view.dispatch({ effects: setMarks.of(marks) });
};

/** Writes a word where the caret stands, in place of what was written there by this before. */
export function putWord(view: EditorView, from: number, to: number, word: string): void {
  view.dispatch({ changes: { from, to, insert: word }, selection: { anchor: from + word.length } });
  view.focus();
}

export const isChoosing = (view: EditorView): boolean => completionStatus(view.state) === 'active';
