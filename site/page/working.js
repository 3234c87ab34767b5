// A working: every step that led to a result, with its formula, the numbers put in, its clause and its trust.

const DETAIL_DIGITS = 6;

// Sections of one result in their order. Those of the check itself stand open; those before them, which say where its
// forces come from, open on demand unless everything is to be open, as on paper.
function workingBlock(sections, { open = false, report = null, tree = null, at = null } = {}) {
  const own = at && at.check ? sections.filter((section) => section.check === at.check) : sections;
  const blocks = [];
  for (const section of sections) {
    const last = blocks[blocks.length - 1];
    if (last && !own.includes(section) && !own.includes(last[0]) && last[0].part === section.part) last.push(section);
    else blocks.push([section]);
  }
  return make("div", { class: "working" },
    report && make("p", { class: "occasion" }, textWithSymbols(sentenceCase(occasionText(at, report, tree)))),
    blocks.map((block) => partOfWorking(block, open || own.includes(block[0]))));
}

function ownSections(sections, at) {
  return sections.filter((section) => at && at.check && section.check === at.check);
}

// Sections of one part of the pipeline behind one heading.
function partOfWorking(sections, open) {
  const [first] = sections;
  const title = first.check ? checkTitle(first.check) : PART_WORDS[first.part] || first.part;
  const many = sections.length > 1;
  const body = sections.map((section) => [many && make("h4", {}, sentenceCase(ofText(section.of))), make("ol", { class: "steps" }, stepRows(section))]);
  const heading = [title, !many && [" · ", ofText(first.of)]];
  if (open) return make("section", { class: "section" }, make("h3", {}, heading), body);
  return make("details", { class: "section" }, make("summary", {}, make("h3", {}, heading)), body);
}

// "full, group 1" for full/group-1.
function ofText(of) {
  return of.split("/").map((word, place) => (place === 0 ? word : word.replace(/-(\d+)$/, " $1"))).join(", ");
}

function stepRows(section) {
  const values = new Map();
  const rows = [];
  const { steps } = section;
  for (let place = 0; place < steps.length; place += 1) {
    const step = steps[place];
    const row = rowOf(step.id);
    // Values of an indexed quantity stand in one table.
    const run = [step];
    while (step.index > 0 && steps[place + 1] && steps[place + 1].id === step.id && steps[place + 1].index > 0) {
      place += 1;
      run.push(steps[place]);
    }
    rows.push(run.length > 1 || step.index > 0 ? indexedRow(section, row, run) : stepRow(section, row, step, values));
    values.set(row.s, { value: step.value, kind: row.k, index: step.index });
  }
  return rows;
}

function stepAddress(section, row) {
  const check = section.check ? known(texts.checks, section.check) : null;
  const word = check ? check.section : null;
  return [section.part, section.of || "-", word, row.s].filter(Boolean).join("/");
}

function stepRow(section, row, step, values) {
  const named = row.h === "reason" || row.h === "name";
  return make("li", { class: "step " + row.h + (step.carried || row.f === null ? " plain-step" : ""), "data-at": stepAddress(section, row), "data-value": named || step.value === null ? null : String(step.value) },
    make("div", { class: "said" },
      make("p", { class: "what" }, textWithSymbols(row.w), step.carried && make("span", { class: "carried" }, " (from above)")),
      !named && make("div", { class: "formula", tabindex: row.f ? 0 : null, role: row.f ? "group" : null, "aria-label": row.f ? "Formula: " + row.w : null },
        formulaPieces(section, row, step, values)),
      detailBlock(section, row, step)),
    marginBlock(row));
}

// Symbol, formula, numbers put in, result: each a piece of its own, so that a narrow page breaks between them.
function formulaPieces(section, row, step, values) {
  const symbol = row.s === "" ? "" : indexedMarkup(row.s, 0);
  const equals = "<mo>=</mo>";
  const pieces = [];
  if (row.f !== null && !step.carried) {
    pieces.push(math(symbol + equals + symbolic(row)));
    // A bare name, or a sum whose terms stand in the rows above, has nothing to put in.
    const numbers = [...row.f].length === 1 ? symbolic(row) : withNumbers(row, values, section.system);
    if (numbers !== symbolic(row)) pieces.push(math(equals + numbers));
    pieces.push(math(equals + resultMarkup(section, row, step)));
  } else {
    pieces.push(math((symbol && symbol + equals) + resultMarkup(section, row, step)));
  }
  return [pieces.map((piece) => make("span", { class: "piece" }, piece)), convertedPiece(section, row, step)];
}

function resultMarkup(section, row, step) {
  return quantityMarkup(baseText(section, row, step));
}

function baseText(section, row, step) {
  if (step.value === null) return "–";
  return shown(step.value, row.k, { from: section.system, to: section.system, reading: "base", rounding: roundingOf(row) });
}

// A utilisation is never printed smaller than it is.
function roundingOf(row) {
  return row.k === UTILISATION ? "up" : "nearest";
}

// The result as people read it, in the units that the reader has chosen, where that says more than the line itself.
function convertedPiece(section, row, step) {
  if (step.value === null) return null;
  const plain = shown(step.value, row.k, { from: section.system, rounding: roundingOf(row) });
  const unitOf = (text) => partsOfShown(text).unit;
  if (unitOf(plain) === unitOf(baseText(section, row, step))) return null;
  return make("span", { class: "converted" }, "= ", plain);
}

function marginBlock(row) {
  return make("p", { class: "margin" }, trustMark(row.t), " ", row.c);
}

function indexedRow(section, row, run) {
  return make("li", { class: "step each", "data-at": stepAddress(section, row) },
    make("div", { class: "said" },
      make("p", { class: "what" }, textWithSymbols(row.w)),
      make("div", { class: "wide", tabindex: 0, role: "group", "aria-label": row.w },
        make("ul", { class: "values" }, run.map((step) => make("li", { "data-value": String(step.value) },
          math(indexedMarkup(row.s, step.index) + "<mo>=</mo>" + resultMarkup(section, row, step))))))),
    marginBlock(row));
}

// What stands behind a number beside a formula: the rows of a table, a shape, what is left over, the ends of a search.
function detailBlock(section, row, step) {
  const { detail } = step;
  if (!detail) return null;
  const base = (value, kind) => shown(value, kind, { from: section.system, to: section.system, reading: "base", digits: DETAIL_DIGITS });
  if (detail.rows) {
    return make("p", { class: "detail" }, "Rows used: ",
      detail.rows.map(([argument, value]) => base(argument, NUMBER) + " → " + base(value, row.k)).join("; "));
  }
  if (detail.shape) return shapeBlock(detail.shape, (length) => base(length, LENGTH));
  if (detail.residuals) {
    return make("p", { class: "detail" }, "What is left of the equations: ", detail.residuals.map((left) => shown(left, NUMBER, { digits: 2 })).join(", "));
  }
  if (detail.bracket) return make("p", { class: "detail" }, "Found between ", detail.bracket.map((end) => base(end, row.k)).join(" and "));
  return null;
}

// The corners as the engine recorded them; a missing corner ends a polygon. Rear is on top, as in the plan. An edge alone
// is told by its two ends.
function shapeBlock(corners, told) {
  const rings = [[]];
  for (const corner of corners) {
    if (corner) rings[rings.length - 1].push([corner[0], -corner[1]]);
    else rings.push([]);
  }
  const all = rings.flat();
  if (all.length < 3) return make("p", { class: "detail" }, "Between ", all.map(([x, y]) => "(" + told(x) + ", " + told(-y) + ")").join(" and "));
  const [xs, ys] = [all.map(([x]) => x), all.map(([, y]) => y)];
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  const [width, height] = [Math.max(...xs) - left, Math.max(...ys) - top];
  const edge = 0.03 * Math.max(width, height);
  const path = rings.filter((ring) => ring.length > 0).map((ring) => "M" + ring.map((corner) => corner.join(" ")).join("L") + "Z").join("");
  const tall = Math.min(140, 200 * (height + 2 * edge) / (width + 2 * edge));
  return make("figure", { class: "detail" },
    draw("svg", { class: "shape", role: "img", "aria-label": "The area as it was measured", height: tall,
      viewBox: [left - edge, top - edge, width + 2 * edge, height + 2 * edge].join(" ") },
    draw("path", { d: path, "vector-effect": "non-scaling-stroke" })),
    told(width), " wide, ", told(height), " deep");
}
