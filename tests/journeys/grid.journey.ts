import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Person } from './person.ts';
import { leave, visit, type Session } from './visit.ts';

let session: Session;
let person: Person;

beforeAll(async () => {
  ({ session, person } = await visit());
  await session.browser
    .defaultBrowserContext()
    .overridePermissions(session.address, ['clipboard-read', 'clipboard-sanitized-write']);
  await session.page.waitForSelector('>>> formula-editor');
});

afterAll(() => leave(session));

async function press(...chords: readonly string[]): Promise<void> {
  for (const chord of chords) await person.press(chord);
}

/** Goes to a cell, and presses keys there. */
async function at(cell: string, ...chords: readonly string[]): Promise<void> {
  await person.goTo(cell);
  await press(...chords);
}

/** A key of the clipboard, as the browser turns it into a command. */
async function clipboard(command: 'Copy' | 'Cut' | 'Paste'): Promise<void> {
  const letter = { Copy: 'KeyC', Cut: 'KeyX', Paste: 'KeyV' } as const;
  await session.page.keyboard.down('Control');
  await session.page.keyboard.press(letter[command], { commands: [command] });
  await session.page.keyboard.up('Control');
}

/** Chooses from the menu of the cells by its words. */
async function choose(words: string): Promise<void> {
  await press('Shift+F10');
  await (await person.seen(`>>> [role=menu][aria-label="Cells"] ::-p-text(${words})`))?.click();
}

/** Expects a cell to hold a text, as the formula line shows it. */
async function expectTyped(cell: string, text: string): Promise<void> {
  await person.goTo(cell);
  const typed = (): Promise<string | undefined> =>
    session.page.evaluate(() => {
      const head = document.querySelector('octavo-app')?.shadowRoot?.querySelector('sheet-head')?.shadowRoot;
      return head?.querySelector('formula-editor')?.shadowRoot?.querySelector('textarea')?.value;
    });
  await expect.poll(typed).toBe(text);
}

test('cells are copied as text for other programs, and as formulas that follow inside the sheet', async () => {
  await person.type('G4', '2 mm', '3', '=G4*10', '=G5*10');
  await person.expectText('G7', /^30$/);
  await at('G4', 'Shift+ArrowDown', 'Shift+ArrowDown', 'Shift+ArrowDown');
  await clipboard('Copy');
  expect(await session.page.evaluate(() => navigator.clipboard.readText())).toBe('2 mm\n3\n20 mm\n30');
  await at('H4');
  await clipboard('Paste');
  await person.expectText('H6', /^20 mm$/);
  await expectTyped('H7', '=H5*10');
});

test('cells that are cut keep what they refer to, and what refers to them follows', async () => {
  await at('G6', 'Shift+ArrowDown');
  await clipboard('Cut');
  await at('I9');
  await clipboard('Paste');
  await person.expectText('I10', /^30$/);
  await expectTyped('I10', '=G5*10');
  await expectTyped('G6', '');
  await at('G5');
  await clipboard('Cut');
  await at('I5');
  await clipboard('Paste');
  await expectTyped('I10', '=I5*10');
  await person.expectText('I10', /^30$/);
  await press('Control+z', 'Control+z');
  await expectTyped('G6', '=G4*10');
  await expectTyped('I9', '');
});

test('a table of another program is pasted cell by cell', async () => {
  await at('G10');
  await session.page.evaluate(() => navigator.clipboard.writeText('5 cm\t7\r\n=G10*2\t"a ""b"""\r\n'));
  await clipboard('Paste');
  await person.expectText('G11', /^100 mm$/);
  await person.expectText('H10', /^7$/);
  await expectTyped('H11', 'a "b"');
});

test('cells are copied and pasted where the browser tells the body of the page alone', async () => {
  const tell = (name: 'copy' | 'paste'): Promise<string> =>
    session.page.evaluate((kind) => {
      const held = globalThis as { clip?: DataTransfer };
      held.clip ??= new DataTransfer();
      document.body.dispatchEvent(
        new ClipboardEvent(kind, { clipboardData: held.clip, bubbles: true, cancelable: true }),
      );
      return held.clip.getData('text/plain');
    }, name);
  await person.type('G30', '12 L');
  await at('G30');
  expect(await tell('copy')).toBe('12 L');
  await at('G31');
  await tell('paste');
  await person.expectText('G31', /^12 L$/);
  await press('Control+z', 'Control+z');
});

test('undo in a page over the sheet leaves the sheet alone', async () => {
  await person.type('G30', '14 L');
  await press('F8');
  await person.seen('>>> driver-shelf >>> input');
  await press('Control+z', 'Escape');
  await person.expectText('G30', /^14 L$/);
  await at('G30', 'Control+z');
  await person.expectText('G30', /^$/);
});

test('fill down and right carry a formula on, row by row and column by column', async () => {
  await person.type('G14', '1', '2', '3');
  await person.type('H14', '=G14*2');
  await at('H14', 'Shift+ArrowDown', 'Shift+ArrowDown', 'Control+d');
  await person.expectText('H16', /^6$/);
  await expectTyped('H16', '=G16*2');
  await at('H16', 'Shift+ArrowRight', 'Control+r');
  await person.expectText('I16', /^12$/);
  await expectTyped('I16', '=H16*2');
  await press('Control+z');
  await expectTyped('I16', '');
});

test('rows and columns are inserted and deleted, and formulas follow', async () => {
  await at('A15');
  await choose('Insert rows above');
  await expectTyped('H17', '=G17*2');
  await person.expectText('H17', /^6$/);
  await at('G1');
  await choose('Insert columns before');
  await expectTyped('I17', '=H17*2');
  await at('G1');
  await choose('Delete these columns');
  await at('A15');
  await choose('Delete these rows');
  await expectTyped('H16', '=G16*2');
  await press('Control+z', 'Control+z', 'Control+z', 'Control+z');
  await expectTyped('H16', '=G16*2');
  await press('Control+y', 'Control+y');
  await expectTyped('I17', '=H17*2');
  await press('Control+z', 'Control+z');
});

test('a cell can be named; formulas say the name, and it follows its cell', async () => {
  await at('G14');
  await choose('Name these cells');
  await person.seen('>>> dialog[open] input');
  await session.page.keyboard.type('Gain');
  await press('Enter');
  await person.type('H18', '=Gain*50');
  await person.expectText('H18', /^50$/);
  await at('A12');
  await choose('Insert rows above');
  await person.expectText('H19', /^50$/);
  await expectTyped('H19', '=Gain*50');
  await at('Gain');
  await person.seen('>>> [aria-activedescendant="cell-G15"]');
  await press('Control+z');
});

test('Delete empties the cells, and undo fills them again', async () => {
  await at('G14', 'Shift+ArrowDown', 'Shift+ArrowDown', 'Delete');
  await person.expectText('G16', /^$/);
  await person.expectText('H16', /^0$/);
  await press('Control+z');
  await person.expectText('H16', /^6$/);
});

test('the width of a column is an edit like any other', async () => {
  const width = (): Promise<number | undefined> =>
    session.page.evaluate(() => {
      const grid = document.querySelector('octavo-app')?.shadowRoot?.querySelector('sheet-grid')?.shadowRoot;
      return grid?.querySelector('.head[data-column="1"]')?.getBoundingClientRect().width;
    });
  const before = (await width()) ?? 0;
  await at('B4', 'Alt+Shift+ArrowRight');
  await expect.poll(width).toBe(before + 8);
  await press('Control+z');
  await expect.poll(width).toBe(before);
});

test('references have one colour in the text and on the sheet while a formula is written', async () => {
  await at('G18');
  await session.page.keyboard.type('=G14+G15*SUM(H14:H16)-G14');
  await person.seen('>>> .outline');
  const colours = await session.page.evaluate(() => {
    const app = document.querySelector('octavo-app')?.shadowRoot;
    const editor = app?.querySelector('sheet-head')?.shadowRoot?.querySelector('formula-editor')?.shadowRoot;
    const words = [...(editor?.querySelectorAll<HTMLElement>('[class*=reference]') ?? [])];
    const rings = [...(app?.querySelector('sheet-grid')?.shadowRoot?.querySelectorAll('.outline') ?? [])];
    return {
      text: words.map((each) => getComputedStyle(each).color),
      sheet: rings.map((each) => getComputedStyle(each).borderTopColor),
    };
  });
  expect(colours.text).toHaveLength(4);
  expect(colours.sheet).toEqual(colours.text);
  expect(new Set(colours.text).size).toBe(3);
  expect(colours.text[3]).toBe(colours.text[0]);
  await press('Escape');
});
