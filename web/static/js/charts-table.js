// What a chart shows, read from the table that stands in its figure: the table is the truth, the
// drawing is made from it. The first row of heads names the series and their roles, each row of the
// body is one place along the axis.
function number(cell) {
  const value = cell.dataset.value;
  return value === undefined || value === '' ? NaN : Number(value);
}

export function isKnown(point) {
  return Number.isFinite(point.value);
}

function places(rows) {
  const at = rows.map((row) => number(row.cells[0]));
  return at.length > 1 && at.every((value) => Number.isFinite(value)) ? at : rows.map((r, i) => i);
}

function series(heads, rows, at) {
  return heads.map((head, column) => ({
    name: head.textContent.trim(),
    role: head.dataset.role || 'value',
    points: rows.map((row, i) => ({
      at: at[i],
      value: number(row.cells[column + 1]),
      text: row.cells[column + 1].textContent.trim(),
      mark: row.dataset.mark || '',
    })),
  }));
}

export function read(figure) {
  const table = figure.querySelector('table');
  const rows = [...table.tBodies[0].rows];
  const at = places(rows);
  const all = series([...table.tHead.rows[0].cells].slice(1), rows, at);
  const target = figure.dataset.target;
  return {
    kind: figure.dataset.chart,
    unit: figure.dataset.unit || '',
    across: figure.dataset.across || '',
    target: target ? Number(target) : NaN,
    targetName: figure.dataset.targetName || '',
    isMeasured: rows.length > 0 && at.some((place, i) => place !== i),
    labels: rows.map((row, i) => ({
      at: at[i],
      text: row.cells[0].dataset.brief || row.cells[0].textContent.trim(),
    })),
    of: (role) => all.filter((one) => one.role === role && one.points.some(isKnown)),
  };
}
