import { HyperFormula } from 'hyperformula';
import type { Plugin } from 'vite';
import { engineFunctions } from '../src/formula/engine-functions.ts';
import { codeToEngine, engineModules } from './engine-modules.ts';
import { withoutUnreached, wordsOf } from './unreached.ts';
import { withoutFunctions } from './without-functions.ts';

const refuse = (what: string): string => `{ throw new Error('The calculation engine is built without ${what}.'); }`;

/** What stands for a module of the engine that is put in ours, or never asked. */
interface Substitute {
  /** What the module must hold for the substitute to fit. */
  readonly replaces: RegExp;
  readonly by: string;
}

const substitutes: Readonly<Record<string, Substitute>> = {
  // Ours reads formulas; what it stands on here is said in src/engine/own-reader.ts.
  'parser/ParserWithCaching.mjs': {
    replaces:
      /constructor\(config, functionRegistry, resolveSheetReference\)[^]*this\.cache = new Cache\(this\.functionRegistry\);/,
    by: `
      import { Cache } from './Cache.mjs';
      export class ParserWithCaching {
        constructor(config, functionRegistry, resolveSheetReference) {
          this.config = config;
          this.resolveSheetReference = resolveSheetReference;
          this.cache = new Cache(functionRegistry);
        }
        parse() ${refuse('a reader of formulas')}
        computeHashFromAst() {}
        fetchCachedResult() {}
        rememberNewAst() {}
      }`,
  },
  'parser/FormulaParser.mjs': { replaces: /export class FormulaLexer /, by: 'export class FormulaLexer {}' },
  'parser/LexerConfig.mjs': {
    replaces: /export const buildLexerConfig /,
    by: `export function buildLexerConfig() ${refuse('a reader of formulas')}`,
  },
  // Of licences there is only the free one here, which is no bought key that would have to be read.
  'license/handsontable-license-key-parser/readLicense.mjs': {
    replaces: /export function readEntitlementLicense\(/,
    by: `export function readEntitlementLicense() ${refuse('the reading of bought licence keys')}`,
  },
  // For large tables that are searched again and again, which is another setting of the engine.
  'Lookup/ColumnIndex.mjs': {
    replaces: /export class ColumnIndex /,
    by: `export class ColumnIndex { constructor() ${refuse('an index of columns')} }`,
  },
  // The handbook's words on each function.
  'interpreter/functionMetadata/index.mjs': { replaces: /FUNCTION_DOCS/, by: 'export const FUNCTION_DOCS = {};' },
};

const parts = HyperFormula.getAllFunctionPlugins().filter(({ implementedFunctions, aliases }) =>
  Object.keys({ ...implementedFunctions, ...aliases }).some((name) => engineFunctions.has(name)),
);
/** What formulas may call, also under its other name, and the one function that the engine insists on. */
const wanted = new Set([
  'VERSION',
  ...engineFunctions,
  ...parts.flatMap(({ aliases = {} }) =>
    Object.entries(aliases).flatMap(([name, whole]) => (engineFunctions.has(name) ? [whole] : [])),
  ),
]);

/** These are spoken to by us, by the one before and by whatever imports them, and by nothing else. */
const fronts = ['HyperFormula.mjs', 'CrudOperations.mjs'];

/** The engine without its own reader of formulas, the words of its handbook, and whatever no call of ours can reach. What it can calculate stays
 *  as `engineFunctions` lists it: a part is kept if one of its functions is in the list. */
function leanModules(): ReadonlyMap<string, string> {
  let modules: ReadonlyMap<string, string> = new Map(
    [...engineModules()].map(([file, code]) => [file, lean(file, code)]),
  );
  const ours = wordsOf(codeToEngine());
  let said: ReadonlySet<string> = ours;
  for (const front of fronts) {
    const importing = [...modules.values()].filter((code) => code.includes(`/${front}"`));
    const roots = new Set([...said, ...importing.flatMap((code) => [...wordsOf(code)])]);
    const alone = withoutUnreached(new Map([[front, modules.get(front) ?? '']]), roots);
    modules = new Map([...modules, ...alone.sources]);
    said = alone.said;
  }
  return withoutUnreached(modules, ours).sources;
}

function lean(file: string, code: string): string {
  const substitute = substitutes[file];
  if (substitute && !substitute.replaces.test(code)) throw new Error(`The calculation engine has another ${file} now.`);
  if (substitute) return substitute.by;
  // The names that functions have in English; ours are given with the language that we hand over.
  if (file === 'i18n/languages/enGB.mjs') return code.replace(/functions: \{[^}]*\}/, 'functions: {}');
  if (/^interpreter\/plugin\/\w+Plugin\.mjs$/.test(file)) return withoutFunctions(code, (name) => wanted.has(name));
  if (file !== 'interpreter/plugin/index.mjs') return code;
  const kept = new Set(parts.map(({ name }) => name));
  const lines = code.split('\n').filter((line) => kept.has(/^export \{ (\w+) \}/.exec(line)?.[1] ?? ''));
  if (lines.length !== kept.size) throw new Error('The calculation engine lists its functions in another way now.');
  return lines.join('\n');
}

const inEngine = '/node_modules/hyperformula/es/';

/** The calculation engine as it is built into the application and the command line. */
export function leanEngine(): Plugin {
  let modules: ReadonlyMap<string, string> | undefined;
  return {
    name: 'octavo:lean-engine',
    apply: 'build',
    enforce: 'pre',
    load(id) {
      const file = id.split(inEngine)[1];
      if (file === undefined) return undefined;
      modules ??= leanModules();
      const code = modules.get(file);
      if (code === undefined) this.error(`The calculation engine has a module ${file} that is not known.`);
      return code;
    },
    generateBundle(_, bundle) {
      for (const chunk of Object.values(bundle)) {
        const id = chunk.type === 'chunk' && chunk.moduleIds.find((each) => each.includes('/node_modules/chevrotain'));
        if (id) this.error(`${chunk.fileName} contains ${id}: the engine's own reader of formulas is back.`);
      }
    },
  };
}
