// Draws one chart as SVG. Colours are the page's own variables, so both themes and paper follow by
// themselves; words stand beside what they name, so that colour never has to tell things apart.
import '../vendor/d3-7.9.2.min.js';
import '../vendor/plot-0.6.17.umd.min.js';
import { isKnown } from './charts-table.js';

const { Plot, d3 } = globalThis;
const LETTER = 6.6; // px, how wide a letter of the axes is at most
const NARROW = 520; // px
const INK = 'var(--ink)';
const SOFT = 'var(--soft)';
const MAIN = 'var(--chart-main)';
const HALO = { stroke: 'var(--paper)', strokeWidth: 4, strokeLinejoin: 'round' };
const FILLS = [1, 2, 3, 4, 5].map((n) => `var(--chart-${n})`);
const locale = document.documentElement.lang || 'en';
const counted = new Intl.NumberFormat(locale, { maximumFractionDigits: 2 });

function widest(texts) {
  return Math.max(0, ...texts.map((text) => text.length)) * LETTER;
}

// As many of the labels as have room beside each other, evenly picked.
function roomy(labels, width) {
  const each = widest(labels.map((label) => label.text)) + 10;
  const step = Math.max(1, Math.ceil((labels.length * each) / Math.max(1, width)));
  return labels.filter((label, i) => i % step === 0).map((label) => label.at);
}

function top(chart, stacked) {
  const values = ['value', 'compared', 'low', 'high'].flatMap((role) => chart.of(role))
    .flatMap((series) => series.points).filter(isKnown).map((point) => point.value);
  const sums = stacked ? d3.rollups(chart.of('value').flatMap((series) => series.points),
    (points) => d3.sum(points, (point) => point.value), (point) => point.at)
    .map(([, sum]) => sum) : [];
  const target = Number.isFinite(chart.target) ? [chart.target] : [];
  return { high: d3.max([...values, ...sums, ...target]) || 1, low: d3.min([0, ...values]) };
}

function labelled(chart, at) {
  return chart.labels.find((label) => label.at === at).text;
}

function axes(chart, width) {
  return [
    Plot.gridY({ ticks: 4, stroke: 'var(--line)', strokeOpacity: 1 }),
    Plot.axisY({ ticks: 4, tickSize: 0, label: null, fill: SOFT,
      tickFormat: (value) => counted.format(value) }),
    Plot.axisX(roomy(chart.labels, width), { tickSize: 0, label: null, fill: SOFT,
      tickFormat: (at) => labelled(chart, at) }),
    Plot.text([chart.unit], { frameAnchor: 'top-left', dx: -34, dy: -22, fill: SOFT,
      textAnchor: 'start' }),
  ];
}

function target(chart) {
  return Number.isFinite(chart.target) ? [
    Plot.ruleY([chart.target], { stroke: INK, strokeDasharray: '5 4' }),
    Plot.text([chart.target], { y: (value) => value, frameAnchor: 'right', dy: -8, fill: INK,
      textAnchor: 'end', text: () => chart.targetName, ...HALO }),
  ] : [];
}

// Words above the stroke that stands out most over its bar, turned inwards at the edges.
function namedWhereClear(chart, main, series) {
  const bar = new Map(main.points.map((point) => [point.at, isKnown(point) ? point.value : 0]));
  const clear = d3.greatest(series.points.filter(isKnown),
    (point) => point.value - bar.get(point.at));
  const at = chart.labels.findIndex((label) => label.at === clear.at);
  const place = at / chart.labels.length;
  const anchor = place < 0.3 ? 'start' : place > 0.6 ? 'end' : 'middle';
  const from = Math.max(0, anchor === 'start' ? at : anchor === 'end' ? at - 3 : at - 1);
  const under = chart.labels.slice(from, from + (anchor === 'middle' ? 3 : 4));
  const y = Math.max(...under.flatMap((label) => [main, series].map((row) =>
    row.points.find((point) => point.at === label.at && isKnown(point))?.value ?? 0)));
  return Plot.text([clear], { x: 'at', y: () => y, dy: -10, text: () => series.name,
    textAnchor: anchor, fill: INK, ...HALO });
}

function marked(points) {
  return Plot.text(points.filter((point) => isKnown(point) && point.mark !== ''), { x: 'at',
    y: 'value', dy: -12, text: 'mark', fill: INK, fontWeight: 650, ...HALO });
}

function plot(options) {
  const svg = Plot.plot({ className: 'drawn', ...options });
  svg.querySelector('style').remove(); // charts.css says the same; the policy allows no other
  return svg;
}

function upright(chart, width, height, marks, stacked) {
  const { high, low } = top(chart, stacked);
  const marginLeft = Math.max(34, widest([counted.format(Math.ceil(high))]) + 14);
  return plot({ width, height, marginLeft, marginTop: 26, marginBottom: 24, marginRight: 12,
    x: { type: 'band', domain: chart.labels.map((label) => label.at), paddingInner: 0.22,
      paddingOuter: 0.1 },
    y: { domain: [low, high * 1.12] },
    marks: [...axes(chart, width - marginLeft - 12), ...marks, Plot.ruleY([0], { stroke: INK }),
      ...target(chart)] });
}

function columns(chart, width, height) {
  const [main] = chart.of('value');
  const room = (width - 60) / chart.labels.length;
  const fits = widest(main.points.map((point) => point.text)) + 4 < room;
  return upright(chart, width, height, [
    Plot.barY(main.points, { x: 'at', y: 'value', fill: MAIN }),
    ...chart.of('compared').flatMap((series) => [
      Plot.tickY(series.points, { x: 'at', y: 'value', stroke: 'var(--paper)', strokeWidth: 6,
        inset: -2 }),
      Plot.tickY(series.points, { x: 'at', y: 'value', stroke: INK, strokeWidth: 2.5, inset: -2 }),
      namedWhereClear(chart, main, series)]),
    ...(fits && chart.of('compared').length === 0 ? [Plot.text(main.points, { x: 'at', y: 'value',
      dy: -8, text: 'text', fill: INK, ...HALO })] : []),
    marked(main.points),
  ]);
}

function stack(chart, width, height) {
  const all = chart.of('value');
  const points = all.flatMap((series, i) => series.points
    .map((point) => ({ ...point, name: series.name, fill: FILLS[i % FILLS.length] })));
  const order = all.map((series) => series.name);
  const best = (name) => d3.greatest(
    points.filter((point) => point.name === name && isKnown(point)), (point) => point.value);
  const named = new Set(order.map(best));
  return upright(chart, width, height, [
    Plot.barY(points, { x: 'at', y: 'value', z: 'name', order, fill: 'fill',
      stroke: 'var(--paper)', strokeWidth: 1 }),
    Plot.text(points, Plot.stackY({ order }, { x: 'at', y: 'value', z: 'name', fill: INK,
      text: (point) => (named.has(point) ? point.name : ''), ...HALO })),
  ], true);
}

// Names of lines at their ends, pushed apart where they would cover each other.
function ends(all, scale) {
  const placed = all.map((series) => {
    const last = series.points.filter(isKnown).at(-1);
    return { name: series.name, last, y: scale(last.value) };
  }).sort((a, b) => a.y - b.y);
  placed.forEach((end, i) => {
    end.y = i === 0 ? end.y : Math.max(end.y, placed[i - 1].y + 14);
  });
  return placed;
}

function lineMarks(chart, series, i) {
  const isMain = series.role === 'value' && i === 0;
  return [
    Plot.lineY(series.points, { x: 'at', y: 'value', stroke: isMain ? MAIN : INK,
      strokeWidth: isMain ? 2.5 : 1.5,
      strokeDasharray: series.role === 'value' ? ['', '2 3', '7 3'][i % 3] : '5 4' }),
    ...(series.role === 'value' ? [Plot.dot(series.points, { x: 'at', y: 'value',
      r: isMain ? 3.5 : 2.5, fill: isMain ? MAIN : INK, stroke: 'var(--paper)' })] : []),
  ];
}

function band(chart) {
  const [low] = chart.of('low');
  const [high] = chart.of('high');
  return low && high ? [
    Plot.areaY(low.points.map((point, i) => ({ at: point.at, low: point.value,
      high: high.points[i].value })),
    { x: 'at', y1: 'low', y2: 'high', fill: 'var(--chart-band)', curve: 'linear' }),
    ...[low, high].map((edge) => Plot.lineY(edge.points, { x: 'at', y: 'value', stroke: SOFT,
      strokeWidth: 1, strokeDasharray: '2 3' }))] : [];
}

function lines(chart, width, height) {
  const named = [...chart.of('value'), ...chart.of('compared'), ...chart.of('low'),
    ...chart.of('high')];
  const { high, low } = top(chart, false);
  const right = Math.min(width < NARROW ? 96 : 180, widest(named.map((one) => one.name)) + 12);
  const margins = { marginLeft: 40, marginRight: right, marginTop: 26, marginBottom: 24 };
  const y = { domain: [low, high * 1.08] };
  const down = d3.scaleLinear(y.domain, [height - 24, 26]);
  const x = chart.isMeasured ? { type: 'linear', domain: d3.extent(chart.labels, (one) => one.at) }
    : { type: 'point', domain: chart.labels.map((label) => label.at), padding: 0.3 };
  return plot({ width, height, ...margins, x, y,
    marks: [...axes(chart, width - right - 40), ...band(chart),
      ...chart.of('compared').flatMap((series, i) => lineMarks(chart, series, i)),
      ...chart.of('value').flatMap((series, i) => lineMarks(chart, series, i)),
      Plot.ruleY([low], { stroke: INK }),
      ...target(chart),
      Plot.text(ends(named, down), { x: (end) => end.last.at, y: (end) => down.invert(end.y),
        dx: 9, textAnchor: 'start', text: 'name', fill: INK, lineWidth: right / 11 }),
      ...chart.of('value').slice(0, 1).map((series) => marked(series.points))] });
}

function bars(chart, width, height) {
  const [main] = chart.of('value');
  const names = chart.labels.map((label) => label.text);
  const marginLeft = Math.min(widest(names) + 18, width * 0.42);
  const marginRight = widest(main.points.map((point) => point.text)) + 16;
  return plot({ width, height, marginLeft, marginRight, marginTop: 4, marginBottom: 4,
    x: { axis: null, domain: [0, top(chart, false).high] },
    y: { type: 'band', domain: chart.labels.map((label) => label.at), paddingInner: 0.3 },
    marks: [
      Plot.axisY({ tickSize: 0, label: null, fill: INK, tickFormat: (at) => labelled(chart, at) }),
      Plot.barX(main.points, { y: 'at', x: 'value', fill: MAIN }),
      ...chart.of('compared').map((series) => Plot.tickX(series.points, { y: 'at', x: 'value',
        stroke: INK, strokeWidth: 2.5, inset: -2 })),
      Plot.text(main.points, { y: 'at', x: 'value', dx: 6, textAnchor: 'start', text: 'text',
        fill: INK }),
      Plot.ruleX([0], { stroke: INK })] });
}

function heat(chart, width, height) {
  const all = chart.of('value');
  const cells = all.flatMap((series) => series.points.filter(isKnown)
    .map((point) => ({ ...point, name: series.name })));
  const most = d3.max(cells, (cell) => cell.value) || 1;
  const marginLeft = widest(chart.labels.map((label) => label.text)) + 20;
  const room = (width - marginLeft) / all.length;
  const fits = widest(cells.map((cell) => cell.text)) < room;
  const heads = all.map((series, i) => ({ at: i, text: series.name }));
  const shown = roomy(heads, width - marginLeft).map((i) => all[i].name);
  return plot({ width, height, marginLeft, marginRight: 4, marginTop: 22, marginBottom: 6,
    padding: 0.04,
    x: { type: 'band', domain: all.map((series) => series.name) },
    y: { type: 'band', domain: chart.labels.map((label) => label.at) },
    marks: [
      Plot.axisX(shown, { anchor: 'top', tickSize: 0, label: null, fill: SOFT }),
      Plot.axisY({ tickSize: 0, label: null, fill: INK, tickFormat: (at) => labelled(chart, at) }),
      Plot.cell(cells, { x: 'name', y: 'at', fill: 'var(--chart-heat)',
        fillOpacity: (cell) => cell.value / most, stroke: 'var(--line)' }),
      ...(fits ? [Plot.text(cells, { x: 'name', y: 'at', text: 'text', fill: INK,
        fontWeight: (cell) => (cell.value / most > 0.6 ? 700 : 400) })] : []),
    ] });
}

const KINDS = { columns, bars, lines, stack, heat };

export function draw(chart, width, height) {
  return KINDS[chart.kind](chart, width, height);
}
