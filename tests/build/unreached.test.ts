import { describe, expect, test } from 'vitest';
import { saidIn } from '../../.config/said.ts';
import { withoutUnreached } from '../../.config/unreached.ts';

const program = `
  export class Sheet {
    write() { this.#note(); return this.measure(); }
    #note() {}
    measure() { return list.filter((each) => each.cell); }
    clear() { this.sweep(); }
    sweep() {}
    quoted() {}
  }
  export class Page extends Sheet { measure() { return Page.made(); } static made() {} static unmade() {} }
  class Nowhere { write() { return this.clear(); } }
  function unused() { return sheet.clear(); }
  const list = ['quoted'];
`;
const methods = ['write', 'measure', 'clear', 'sweep', 'quoted', 'made', 'unmade'];
const left = (code: string): string[] => methods.filter((name) => new RegExp(`\\b${name}\\(\\) {`).test(code));

type Rest = Partial<Parameters<typeof withoutUnreached>[0]>;
const lean = (elsewhere: string, rest: Rest = {}): string[] => {
  const sources = new Map([['sheet', program]]);
  return left(withoutUnreached({ sources, roots: [saidIn(elsewhere)], ...rest }).get('sheet') ?? '');
};

describe('of a program stays', () => {
  test('what is called elsewhere, what that calls of its class and of those that extend it, and what is said in quotes', () => {
    expect(lean('new Sheet().write(Page);')).toEqual(['write', 'measure', 'quoted', 'made']);
  });

  test('what a function calls, if the function is called', () => {
    expect(lean('new Sheet(); unused();')).toEqual(['clear', 'sweep', 'quoted']);
  });

  test('nothing of a class that is named nowhere', () => {
    expect(lean('write();')).toEqual([]);
  });

  test('nothing that is never called, nor what only it would call', () => {
    const unasked = new Set(['Sheet.clear']);
    expect(lean('new Sheet(); sheet.clear(); sheet.write();', { unasked })).toEqual(['write', 'measure', 'quoted']);
  });

  test('of a closed class only what it calls itself', () => {
    const other = 'class Other { run() { sheet.clear(); } }';
    const sources = new Map([['sheet', program + other]]);
    const elsewhere = 'new Sheet(); other.run(Other);';
    expect(lean(elsewhere, { sources })).toEqual(['clear', 'sweep', 'quoted']);
    expect(lean(elsewhere, { sources, isClosed: (owner) => owner === 'Sheet' })).toEqual(['quoted']);
  });
});
