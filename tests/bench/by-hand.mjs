/** What an edit would take if nothing were calculated and no component drew: the same words and lines put into the same page
 *  by hand. The browser alone needs that much. */
export async function byHand(page, edit, texts, times) {
  await page.evaluate(`globalThis.edit = ${String(edit)}`);
  return await page.evaluate(replay, texts, times);
}

async function replay(texts, times) {
  const roots = [document];
  for (const root of roots)
    for (const { shadowRoot } of root.querySelectorAll('*')) if (shadowRoot) roots.push(shadowRoot);
  const rest = () => new Promise((resolve) => setTimeout(resolve, 400));
  /** The words and attributes that an edit leaves behind where it changed any. */
  const left = async (text) => {
    const touched = new Map();
    const observer = new MutationObserver((changes) => {
      for (const { target, attributeName } of changes)
        touched.set(target, (touched.get(target) ?? new Set()).add(attributeName));
    });
    for (const root of roots) observer.observe(root, { subtree: true, attributes: true, characterData: true });
    await globalThis.edit(text);
    observer.disconnect();
    await rest();
    return touched;
  };
  const [first, second] = texts;
  await left(first);
  const touched = [await left(second), await left(first)];
  const places = touched.flatMap((each) =>
    [...each].flatMap(([target, names]) => [...names].map((name) => [target, name])),
  );
  const valueAt = ([target, name]) => (name === null ? target.data : target.getAttribute(name));
  const put = ([target, name], value) => {
    if (name === null) target.data = value;
    else if (value === null) target.removeAttribute(name);
    else target.setAttribute(name, value);
  };
  const states = [places.map(valueAt)];
  await globalThis.edit(second);
  await rest();
  states.push(places.map(valueAt));
  const changing = places
    .map((place, index) => [place, index])
    .filter(([, index]) => states[0][index] !== states[1][index]);
  const took = [];
  for (let time = 0; time < times; time++) {
    await new Promise((resolve) => setTimeout(resolve, 60));
    const started = performance.now();
    for (const [place, index] of changing) put(place, states[time % 2][index]);
    const handled = await globalThis.bench.settled();
    const { began, painted } = await globalThis.bench.frame();
    took.push(painted - started - Math.max(0, began - handled));
  }
  return { took, changed: changing.length };
}
