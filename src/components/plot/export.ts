/** What a drawing outside the page must carry itself. */
const CARRIED = [
  'fill',
  'stroke',
  'stroke-width',
  'stroke-dasharray',
  'stroke-linejoin',
  'fill-opacity',
  'stroke-opacity',
  'paint-order',
  'font-family',
  'font-size',
  'font-weight',
  'text-anchor',
] as const;

const HEAD = 30;

/** A drawing as a picture file of its own: styles written into it, the title above, the paper behind. */
export function standaloneSvg(drawing: SVGSVGElement, title: string, description: string): string {
  const copy = drawing.cloneNode(true) as SVGSVGElement;
  const originals = drawing.querySelectorAll<SVGElement>('*');
  copy.querySelectorAll<SVGElement>('*').forEach((element, index) => {
    const original = originals[index];
    if (original) carryStyle(original, element);
  });
  const width = Number(drawing.getAttribute('width'));
  const height = Number(drawing.getAttribute('height')) + HEAD;
  const host = getComputedStyle(drawing);
  copy.setAttribute('xmlns', 'http://www.w3.org/2000/svg');
  copy.setAttribute('viewBox', `0 ${-HEAD} ${width} ${height}`);
  copy.setAttribute('height', `${height}`);
  copy.removeAttribute('class');
  const paper = shape('rect', {
    x: 0,
    y: -HEAD,
    width,
    height,
    fill: host.getPropertyValue('--panel').trim() || '#ffffff',
  });
  const heading = shape('text', {
    x: 8,
    y: -10,
    fill: host.color,
    'font-family': host.fontFamily,
    'font-size': 14,
    'font-weight': 600,
  });
  heading.textContent = title;
  const spoken = shape('desc', {});
  spoken.textContent = description;
  copy.prepend(spoken, paper, heading);
  return new XMLSerializer()
    .serializeToString(copy)
    .replaceAll('<!---->', '')
    .replaceAll(/<!--\?lit\$[^>]*-->/g, '');
}

function carryStyle(from: SVGElement, to: SVGElement): void {
  const computed = getComputedStyle(from);
  for (const name of CARRIED) {
    const value = computed.getPropertyValue(name);
    if (value !== '') to.setAttribute(name, value);
  }
  to.removeAttribute('class');
}

function shape(name: string, attributes: Readonly<Record<string, string | number>>): SVGElement {
  const element = document.createElementNS('http://www.w3.org/2000/svg', name);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, `${value}`);
  return element;
}
