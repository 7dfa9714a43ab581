import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import '../../src/components/dialog/ask-dialog.ts';
import type { AskDialog } from '../../src/components/dialog/ask-dialog.ts';
import { themeSheet } from '../../src/components/theme.ts';

document.adoptedStyleSheets.push(themeSheet());

const shown = (): Promise<AskDialog> => fixture(html`<ask-dialog></ask-dialog>`);
const question = { title: 'Go to', label: 'Cell', value: '', confirm: 'Go' };
const inputOf = (asked: AskDialog): HTMLInputElement | null | undefined => asked.shadowRoot?.querySelector('input');

describe('a question', () => {
  it('is accessible, and gives what is typed', async () => {
    const asked = await shown();
    const answer = asked.ask(question);
    await asked.updateComplete;
    await expect(asked).to.be.accessible();
    await sendKeys({ type: 'B5' });
    await sendKeys({ press: 'Enter' });
    expect(await answer).to.equal('B5');
  });

  it('offers texts, and takes others as well', async () => {
    const asked = await shown();
    const answer = asked.ask({ ...question, offers: ['Pad', 'Window'] });
    await asked.updateComplete;
    expect([...(inputOf(asked)?.list?.options ?? [])].map(({ value }) => value)).to.deep.equal(['Pad', 'Window']);
    await expect(asked).to.be.accessible();
    await sendKeys({ type: 'B5' });
    await sendKeys({ press: 'Enter' });
    expect(await answer).to.equal('B5');
  });

  it('stays open with what was typed and why it cannot be taken, until it can be', async () => {
    const asked = await shown();
    const check = (text: string): string | undefined => (text === 'B6' ? undefined : `“${text}” is no cell.`);
    const answer = asked.ask({ ...question, check });
    await asked.updateComplete;
    await sendKeys({ type: 'B5' });
    await sendKeys({ press: 'Enter' });
    await asked.updateComplete;
    expect(inputOf(asked)?.value).to.equal('B5');
    expect(asked.shadowRoot?.querySelector('[role=alert]')?.textContent).to.equal('“B5” is no cell.');
    await expect(asked).to.be.accessible();
    await sendKeys({ press: 'Backspace' });
    await sendKeys({ type: '6' });
    await sendKeys({ press: 'Enter' });
    expect(await answer).to.equal('B6');
  });

  it('is answered no by Escape and by another question', async () => {
    const asked = await shown();
    const first = asked.ask(question);
    await asked.updateComplete;
    const second = asked.ask(question);
    expect(await first).to.equal(undefined);
    await asked.updateComplete;
    await sendKeys({ press: 'Escape' });
    expect(await second).to.equal(undefined);
  });

  it('asked at once after another waits for its own answer', async () => {
    const asked = await shown();
    const first = asked.ask(question);
    await asked.updateComplete;
    asked.shadowRoot?.querySelector('form')?.requestSubmit();
    const second = asked.ask(question);
    expect(await first).to.equal('');
    // The news that the first was closed comes now.
    await new Promise((come) => setTimeout(come, 50));
    await sendKeys({ type: 'D9' });
    await sendKeys({ press: 'Enter' });
    expect(await second).to.equal('D9');
  });

  it('that was left with something typed is asked anew without it', async () => {
    const asked = await shown();
    const first = asked.ask({ ...question, value: 'Bench' });
    await asked.updateComplete;
    await sendKeys({ type: 'Bank' });
    await sendKeys({ press: 'Escape' });
    expect(await first).to.equal(undefined);
    void asked.ask({ ...question, value: 'Bench' });
    await asked.updateComplete;
    expect(inputOf(asked)?.value).to.equal('Bench');
  });
});
