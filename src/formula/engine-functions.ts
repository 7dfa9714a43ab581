/** How the engine's own functions treat dimensions. `same`: all arguments share one, and so does the result. */
export type Rule = 'same' | 'first' | 'plain' | 'truth' | 'text' | 'branches' | 'open';

const rules: Readonly<Record<Rule, string>> = {
  same: 'SUM AVERAGE MIN MAX MEDIAN STDEV STDEV.S STDEV.P',
  first: 'ABS ROUND ROUNDUP ROUNDDOWN CEILING FLOOR MROUND INT TRUNC LARGE SMALL',
  plain:
    'LOG LOG10 LN EXP SIN COS TAN ASIN ACOS ATAN ATAN2 SINH COSH TANH PI COUNT COUNTA COUNTIF COUNTBLANK MATCH ROWS COLUMNS ROW COLUMN LEN SIGN FIND SEARCH',
  truth: 'AND OR NOT XOR ISNUMBER ISERROR ISERR ISNA ISBLANK ISTEXT ISLOGICAL EXACT',
  text: 'TEXT CONCATENATE LEFT RIGHT MID UPPER LOWER PROPER TRIM SUBSTITUTE REPT CHAR',
  branches: 'IF IFERROR IFNA IFS CHOOSE SWITCH',
  open: '',
};

const ruled = new Map<string, Rule>(
  (Object.entries(rules) as [Rule, string][]).flatMap(([rule, names]) =>
    names.split(' ').map((name) => [name, rule] as const),
  ),
);

/** What formulas may call of the engine's own functions. The engine is told no other, and what only others need is not
 *  part of the built application: finance, dates, databases, number bases, probability. */
export const engineFunctions: ReadonlySet<string> = new Set(
  `
    ABS ACOS ACOSH AND ASIN ASINH ATAN ATAN2 ATANH AVERAGE AVERAGEIF CEILING CHAR CHOOSE CODE COLUMN COLUMNS
    CONCATENATE COS COSH COT COUNT COUNTA COUNTBLANK COUNTIF COUNTIFS COUNTUNIQUE DEGREES EVEN EXACT EXP
    FALSE FILTER FIND FLOOR HLOOKUP IF IFERROR IFNA IFS INDEX INT ISBLANK ISERR ISERROR ISLOGICAL ISNA
    ISNONTEXT ISNUMBER ISTEXT LARGE LEFT LEN LN LOG LOG10 LOWER MATCH MAX MAXIFS MEDIAN MID MIN MINIFS MOD MROUND N NA
    NOT ODD OR PERCENTILE PERCENTILE.INC PI POWER PRODUCT PROPER QUARTILE QUARTILE.INC QUOTIENT RADIANS REPLACE REPT
    RIGHT ROUND ROUNDDOWN ROUNDUP ROW ROWS SEARCH SIGN SIN SINH SMALL SORT SQRT SQRTPI STDEV STDEV.P STDEV.S
    SUBSTITUTE SUM SUMIF SUMIFS SUMPRODUCT SUMSQ SWITCH TAN TANH TEXT TEXTJOIN TRIM TRUE TRUNC UNIQUE UPPER
    VALUE VAR VAR.P VAR.S VLOOKUP XLOOKUP XOR
  `
    .trim()
    .split(/\s+/),
);

export const ruleOf = (name: string): Rule => ruled.get(name) ?? 'open';
