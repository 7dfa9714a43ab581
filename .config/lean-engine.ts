import { HyperFormula } from 'hyperformula';
import type { Plugin } from 'vite';
import { engineFunctions } from '../src/formula/engine-functions.ts';
import { codeToEngine, emitter, engineModules } from './engine-modules.ts';
import { saidIn } from './said.ts';
import { withShortNames } from './short-names.ts';
import { withoutUnreached } from './unreached.ts';
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
  // Of licences there is only the free one here, which allows everything.
  'license/licenseResolution.mjs': {
    replaces: /export function resolveLicense\(/,
    by: `
      import { unrestrictedEntitlement } from './LicenseEntitlement.mjs';
      export const resolveLicense = () => (
        { validityState: 'valid', blocksEvaluation: false, entitlement: unrestrictedEntitlement() });`,
  },
  'license/functionCapabilities.mjs': {
    replaces: /export const FUNCTION_CAPABILITY_TABLE /,
    by: 'export const FUNCTION_CAPABILITY_TABLE = new Map();',
  },
  // No text is a date or a time here: the engine is given no format for them.
  'DateTimeDefault.mjs': {
    replaces: /if \(dateFormat === undefined && timeFormat === undefined\) \{\s*return undefined;/,
    by: `
      export const TIME_FORMAT_SECONDS_ITEM_REGEXP = /^ss(\\.(s+|0+))?$/;
      export const defaultParseToDateTime = () => undefined;`,
  },
  // For large tables that are searched again and again, which is another setting of the engine.
  'Lookup/ColumnIndex.mjs': {
    replaces: /export class ColumnIndex /,
    by: `export class ColumnIndex { constructor() ${refuse('an index of columns')} }`,
  },
  // The handbook's words on each function.
  'interpreter/functionMetadata/index.mjs': { replaces: /FUNCTION_DOCS/, by: 'export const FUNCTION_DOCS = {};' },
};

/** What only the handbook's words on each function, taken out above, would import. */
const HANDBOOK = /\/functionMetadata\/categories\//;

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

/** What the engine would do if it were given names or complex numbers, a formula named whole rows or columns or could not
 *  be read, rows or columns were put in, or anything but cells were undone. */
const unasked = new Set(
  Object.entries({
    CrudOperations: 'ensureItIsPossibleToAddNamedExpression',
    Operations:
      'addNamedExpression restoreNamedExpression removeNamedExpression addRows addColumns addSheetWithId removeSheetByName setParsingErrorToCell',
    UndoRedo: 'undoAddSheet undoRemoveSheet undoAddNamedExpression',
    DependencyGraph: 'addRows addColumns fetchNamedExpressionVertex',
    LazilyTransformingAstService: 'addTransformation applyTransformations',
    AbsoluteColumnRange: 'fromColumnRange',
    AbsoluteRowRange: 'fromRowRangeAst',
    NamedExpressions: 'nearestNamedExpression namedExpressionInAddress namedExpressionOrPlaceholder',
    ArithmeticHelper: 'coerceScalarToComplex',
  }).flatMap(([owner, methods]) => methods.split(' ').map((method) => `${owner}.${method}`)),
);

/** These are spoken to by us, by the one before and by whatever imports them, and by nothing else. */
const fronts = ['HyperFormula.mjs', 'CrudOperations.mjs'];

/** The engine without its own reader of formulas, the words of its handbook, and whatever no call of ours can reach. What it can calculate stays
 *  as `engineFunctions` lists it: a part is kept if one of its functions is in the list. */
function leanModules(): ReadonlyMap<string, string> {
  let modules: ReadonlyMap<string, string> = new Map(
    [...engineModules()].flatMap(([file, code]) => (HANDBOOK.test(file) ? [] : [[file, wanting(file, code)]])),
  );
  let roots = codeToEngine().map(saidIn);
  const ours = roots;
  for (const front of fronts) {
    const importing = [...modules.values()].filter((code) => code.includes(`/${front}"`));
    const alone = withoutUnreached({
      sources: new Map([[front, modules.get(front) ?? '']]),
      roots: [...roots, ...importing.map(saidIn)],
    });
    modules = new Map([...modules, ...alone]);
    roots = [...roots, ...[...alone.values()].map(saidIn)];
  }
  const lean = withoutUnreached({
    sources: modules,
    roots: ours,
    isClosed: (owner) => owner.endsWith('Plugin'),
    unasked,
  });
  return withShortNames(lean, [...codeToEngine(), emitter()]);
}

function wanting(file: string, code: string): string {
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
