import { expect, fixture, html, oneEvent } from '@open-wc/testing';
import { emulateMedia, sendKeys, setViewport } from '@web/test-runner-commands';
import '../../src/app/fonts/faces.css';
import '../../src/components/ask/ask-answer.ts';
import type { AskAnswer } from '../../src/components/ask/ask-answer.ts';
import '../../src/components/ask/ask-form.ts';
import type { AskForm } from '../../src/components/ask/ask-form.ts';
import '../../src/components/ask/ask-told.ts';
import { kinds, type Kind, type Wish } from '../../src/components/ask/data.ts';
import '../../src/components/ask/value-field.ts';
import type { ValueField } from '../../src/components/ask/value-field.ts';
import { themeSheet } from '../../src/components/theme.ts';
import { wish, choices, setting, field, answer } from './asked.ts';

const textOf = (element: Element): string => (element.shadowRoot?.textContent ?? '').replaceAll(/\s+/g, ' ');
const form = (kind: Kind, given = choices): Promise<AskForm> =>
  fixture<AskForm>(html`<ask-form .wish=${{ ...wish, kind }} .choices=${given}></ask-form>`);
const answered = (): Promise<AskAnswer> => fixture<AskAnswer>(html`<ask-answer .answer=${answer}></ask-answer>`);
const detailOf = async <T>(element: Element, name: string, act: () => unknown): Promise<T> => {
  const heard = oneEvent(element, name);
  await act();
  return ((await heard) as CustomEvent<T>).detail;
};

before(() => document.adoptedStyleSheets.push(themeSheet()));
afterEach(async () => {
  await emulateMedia({ colorScheme: 'light' });
  await setViewport({ width: 1000, height: 800 });
});

describe('the form of a question', () => {
  for (const colorScheme of ['light', 'dark'] as const) {
    for (const kind of Object.keys(kinds) as Kind[]) {
      it(`has nothing that the checker objects to: ${kinds[kind]}, ${colorScheme}`, async () => {
        await emulateMedia({ colorScheme });
        await expect(await form(kind)).to.be.accessible();
      });
    }
  }

  it('asks what was typed in plain words', async () => {
    const element = await form('seek');
    element.focus();
    await element.updateComplete;
    const { sentence } = await detailOf<{ sentence: string }>(element, 'read', async () => {
      await sendKeys({ type: 'which litres?' });
      await sendKeys({ press: 'Enter' });
    });
    expect(sentence).to.equal('which litres?');
  });

  it('tells what is typed before it asks', async () => {
    const element = await form('seek');
    const heard: string[] = [];
    element.addEventListener('wish', (event) => heard.push((event as CustomEvent<{ wish: Wish }>).detail.wish.target));
    element.addEventListener('ask', () => heard.push('ask'));
    const input = [...(element.shadowRoot?.querySelectorAll<HTMLInputElement>('.fields .short input') ?? [])][0];
    input?.select();
    input?.focus();
    await sendKeys({ type: '0.8' });
    await sendKeys({ press: 'Enter' });
    expect(heard).to.deep.equal(['0.8', 'ask']);
  });

  it('offers words in place of a number for a verdict', async () => {
    expect(textOf(await form('seek', { ...choices, isVerdict: true }))).to.contain('clear of failure');
  });

  it('leaves out what spreads, and adds', async () => {
    const element = await form('scatter', { ...choices, spreads: choices.inputs });
    const { wish: left } = await detailOf<{ wish: Wish }>(element, 'wish', () =>
      element.shadowRoot?.querySelector<HTMLButtonElement>('[aria-label="Leave out Woofer"]')?.click(),
    );
    expect(left.spreads).to.deep.equal([]);
    const select = [...(element.shadowRoot?.querySelectorAll('select') ?? [])].at(-1);
    const { id } = await detailOf<{ id: string }>(element, 'spread', () => {
      if (select) select.value = 's!B2';
      select?.dispatchEvent(new Event('change'));
    });
    expect(id).to.equal('s!B2');
  });

  it('fits a telephone without scrolling sideways', async () => {
    await setViewport({ width: 390, height: 800 });
    for (const kind of Object.keys(kinds) as Kind[]) {
      const element = await form(kind);
      expect(element.scrollWidth, kind).to.be.at.most(element.clientWidth);
    }
  });
});

describe('an answer', () => {
  for (const colorScheme of ['light', 'dark'] as const) {
    it(`has nothing that the checker objects to, ${colorScheme}`, async () => {
      await emulateMedia({ colorScheme });
      await expect(await answered()).to.be.accessible();
    });
  }

  it('sets what was found', async () => {
    const element = await answered();
    const { sets } = await detailOf<{ sets: unknown }>(element, 'set', () =>
      element.shadowRoot?.querySelector<HTMLButtonElement>('.found button')?.click(),
    );
    expect(sets).to.deep.equal(setting(1, 2));
  });

  it('sets what stands in a row of a table', async () => {
    const element = await answered();
    const { sets } = await detailOf<{ sets: unknown }>(element, 'set', () =>
      element.shadowRoot?.querySelectorAll<HTMLButtonElement>('.table button')[1]?.click(),
    );
    expect(sets).to.deep.equal(setting(1, 3));
  });

  it('tells step by step what turns, and what turns nothing alone', async () => {
    const text = textOf(await answered());
    expect(text).to.contain('Travel fail → good Good: enough.');
    expect(text).to.contain('another step needs it');
  });

  it('leads to the cells behind it', async () => {
    const element = await answered();
    const place = await detailOf(element, 'go', () =>
      element.shadowRoot?.querySelector<HTMLButtonElement>('.bars button')?.click(),
    );
    expect(place).to.deep.equal({ sheet: 's', cell: 'B4' });
  });

  it('shows its tables, but not what only the kept sheet needs', async () => {
    const text = textOf(await answered());
    expect(text).to.contain('12.1');
    expect(text).not.to.contain('Only kept');
  });
});

describe('a map', () => {
  const map = async (): Promise<{ element: ValueField; stage: HTMLElement }> => {
    const element = await fixture<ValueField>(html`<value-field .data=${field}></value-field>`);
    const stage = element.shadowRoot?.querySelector<HTMLElement>('.stage');
    if (!stage) throw new Error('There is no stage.');
    return { element, stage };
  };

  it('begins where the sheet stands, and the arrows and Enter pick and set', async () => {
    const { element, stage } = await map();
    expect(stage.getAttribute('aria-valuetext')).to.equal('column 0, row 0');
    stage.focus();
    await sendKeys({ press: 'ArrowRight' });
    await sendKeys({ press: 'ArrowUp' });
    await sendKeys({ press: 'ArrowUp' });
    await sendKeys({ press: 'ArrowUp' });
    await element.updateComplete;
    expect(stage.getAttribute('aria-valuetext')).to.equal('column 1, row 2');
    const { sets } = await detailOf<{ sets: unknown }>(element, 'set', () => sendKeys({ press: 'Enter' }));
    expect(sets).to.deep.equal(setting(1, 2));
  });

  it('is picked by a click where it was clicked', async () => {
    const { element, stage } = await map();
    await new Promise((drawn) => setTimeout(drawn, 100));
    await element.updateComplete;
    const { left, top, width } = stage.getBoundingClientRect();
    stage.dispatchEvent(new PointerEvent('pointerdown', { clientX: left + width - 17, clientY: top + 11 }));
    await element.updateComplete;
    expect(stage.getAttribute('aria-valuetext')).to.equal('column 2, row 2');
  });
});

describe('a question under way', () => {
  it('can be given up', async () => {
    const element = await fixture(html`<ask-told said="Looking…" .progress=${0.5}></ask-told>`);
    await expect(element).to.be.accessible();
    const stopped = oneEvent(element, 'stop');
    element.shadowRoot?.querySelector('button')?.click();
    await stopped;
  });
});
