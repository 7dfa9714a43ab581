import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import { catalogue } from '../../functions/index.ts';
import { wordsByName } from '../../functions/words.ts';
import { engineFunctions } from '../../src/formula/engine-functions.ts';
import { functionsByName } from '../../src/formula/types.ts';
import '../../src/components/function-guide/function-guide.ts';
import type { FunctionGuide } from '../../src/components/function-guide/function-guide.ts';
import { learnUsual } from '../../src/components/function-guide/usual.ts';
import { paint } from './paint.ts';

const guide = (name = '', words?: ReturnType<typeof wordsByName>): Promise<FunctionGuide> =>
  fixture<FunctionGuide>(
    html`<function-guide
      .functions=${functionsByName(catalogue, words ?? wordsByName(catalogue))}
      function=${name}
      style="height: 600px"
    ></function-guide>`,
  );
const names = (element: FunctionGuide): string[] =>
  [...element.shadowRoot!.querySelectorAll('li')].map((each) => each.textContent.trim());

before(paint);

describe('the function guide', () => {
  it('is accessible and lists every function', async () => {
    const element = await guide();
    expect(names(element).toSorted()).to.deep.equal(
      [...catalogue.map(({ name }) => name), ...engineFunctions].toSorted(),
    );
    await expect(element).to.be.accessible();
  });

  it('can be searched at once where there is a keyboard', async () => {
    const element = await guide();
    await new Promise((drawn) => requestAnimationFrame(drawn));
    expect(element.shadowRoot!.activeElement?.getAttribute('aria-label')).to.equal('Search functions');
  });

  it('opens at a function with what it takes, gives, and where it comes from', async () => {
    const page = (await guide('closed.qtc')).shadowRoot!.querySelector('article')!;
    const { parameters, summary, example } = catalogue.find(({ name }) => name === 'CLOSED.QTC')!;
    for (const each of Object.values(parameters)) expect(page.textContent).to.contain(each.summary);
    expect(page.textContent).to.contain(summary);
    expect(page.textContent).to.contain(example.formula);
  });

  it('says of the usual functions too what they take, with an example', async () => {
    await learnUsual();
    const page = (await guide('vlookup')).shadowRoot!.querySelector('article')!;
    expect(page.textContent).to.contain('VLOOKUP(sought, range, column, [sorted])');
    expect(page.textContent).to.contain('Write FALSE() at the end for an exact match.');
    expect(page.textContent).to.contain('=VLOOKUP(2, A1:B3, 1, FALSE())');
  });

  it('tells what a function takes, and what is not there yet, before its words have come', async () => {
    const element = await guide('closed.qtc', new Map());
    const page = element.shadowRoot!.querySelector('article')!;
    expect(page.textContent).to.contain(
      'Cannot be fetched just now and is asked for again: what is said of this function.',
    );
    expect(page.textContent).to.contain('net volume of air');
    expect(page.textContent).not.to.contain('undefined');
    element.functions = functionsByName(catalogue, wordsByName(catalogue));
    await element.updateComplete;
    expect(page.textContent).to.contain('=CLOSED.QTC(');
    expect(page.textContent).not.to.contain('Cannot be fetched');
  });

  it('finds by words, and hands over an example', async () => {
    const element = await guide();
    element.shadowRoot!.querySelector('input')!.focus();
    await sendKeys({ type: 'port length' });
    await element.updateComplete;
    expect(names(element)).to.contain('PORT.LENGTH');
    expect(names(element)).not.to.contain('CLOSED.QTC');
    let formula = '';
    element.addEventListener('use-example', (event) => {
      formula = (event as CustomEvent<{ formula: string }>).detail.formula;
    });
    element.shadowRoot!.querySelector<HTMLButtonElement>('.use')!.click();
    expect(formula).to.match(/^=[A-Z0-9.]+\(/);
  });

  it('finds those first that begin with the word', async () => {
    const element = await guide();
    element.shadowRoot!.querySelector('input')!.focus();
    await sendKeys({ type: 'closed' });
    await element.updateComplete;
    const found = names(element);
    const begin = found.filter((name) => name.startsWith('CLOSED'));
    expect(found.slice(0, begin.length)).to.deep.equal(begin);
    expect(found.length).to.be.above(begin.length);
  });

  it('goes through what was found with the arrows, from the search', async () => {
    const element = await guide();
    element.shadowRoot!.querySelector('input')!.focus();
    await sendKeys({ type: 'port' });
    await element.updateComplete;
    const [first, second] = names(element);
    const opened = (): string | null => element.shadowRoot!.querySelector('article')!.getAttribute('aria-label');
    expect(opened()).to.equal(first);
    await sendKeys({ press: 'ArrowDown' });
    await element.updateComplete;
    expect(opened()).to.equal(second);
    await sendKeys({ press: 'ArrowUp' });
    await element.updateComplete;
    expect(opened()).to.equal(first);
  });

  it('keeps the functions of one family together under its name', async () => {
    const element = await guide();
    const heads = [...element.shadowRoot!.querySelectorAll('.list h3')].map((each) => each.textContent);
    expect(new Set(heads).size).to.equal(heads.length);
    for (const list of element.shadowRoot!.querySelectorAll('.list ul')) {
      const family = list.previousElementSibling!.textContent;
      if (family === 'The usual ones') continue;
      for (const entry of list.querySelectorAll('li')) expect(entry.textContent.trim().split('.')[0]).to.equal(family);
    }
  });
});
