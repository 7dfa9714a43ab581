/** Every colour of the house, light and dark. Text keeps 4.5 to 1 on the papers it stands on, drawn meaning 3 to 1. */
const light = `
  --ground: #ebe8e0; --panel: #f4f2eb; --paper: #fbfaf6; --line: #e0dcd1; --line2: #c6c1b3; --blue1: #e3ecee; --blue2: #c3d5da;
  --ink: #191c1e; --ink2: #4f5457; --ink3: #5f6466; --accent: #2340c4; --accent-soft: #e7eafa; --on-accent: #ffffff;
  --good: #176340; --good-bg: #e2f0e6; --good-line: #b4d6c0; --caution: #7d4d00; --caution-bg: #fbedcf; --caution-line: #e7cb8d;
  --fail: #a31f2c; --fail-bg: #fbe4e2; --fail-line: #ecb6b3; --woofer: #7a3f78; --tweeter: #0f7686; --system: #191c1e; --ghost: #7b807e;
  color-scheme: light;`;

const dark = `
  --ground: #101214; --panel: #14171a; --paper: #181b1e; --line: #282c30; --line2: #42474c; --blue1: #1e2528; --blue2: #2d393e;
  --ink: #ecebe5; --ink2: #b3b5b1; --ink3: #989c99; --accent: #9db0ff; --accent-soft: #232a4a; --on-accent: #11163a;
  --good: #86d3a6; --good-bg: #173021; --good-line: #2c5a3f; --caution: #efc169; --caution-bg: #33280f; --caution-line: #66501f;
  --fail: #ff9f97; --fail-bg: #3c191a; --fail-line: #74312f; --woofer: #d79ad3; --tweeter: #5fc4d2; --system: #ecebe5; --ghost: #7c817f;
  color-scheme: dark;`;

const base = `
  --sans: 'Plex Sans', system-ui, sans-serif; --mono: 'Plex Mono', ui-monospace, monospace;`;

/** The tokens as custom properties of the root: the system's choice, or the one set in its attribute \`data-theme\`. */
export const themeText = `
:root { ${base} ${light} background: var(--ground); color: var(--ink); }
@media (prefers-color-scheme: dark) { :root { ${dark} } }
:root[data-theme='light'] { ${light} }
:root[data-theme='dark'] { ${dark} }
@media print { :root:root { ${light} background: none; } }
body { margin: 0; }
`;

/** The same as a sheet that a page adopts. */
export function themeSheet(): CSSStyleSheet {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(themeText);
  return sheet;
}
