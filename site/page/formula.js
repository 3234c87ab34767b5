// Formulas: baked templates in which each symbol is one private-use character, filled with symbols or with numbers.

const GAP_FIRST = 0xe000;

// MathML from the text tables and from printed numbers only; nothing that a reader typed comes here.
function math(markup) {
  const holder = document.createElement("template");
  holder.innerHTML = "<math displaystyle=\"true\"><mrow>" + markup + "</mrow></math>";
  return holder.content.firstChild;
}

function symbolMarkup(symbol) {
  if (texts.symbols[symbol]) return texts.symbols[symbol];
  const [letter, ...below] = symbol.replace(/[<&]/g, "").split("_");
  return below.length === 0 ? "<mi>" + letter + "</mi>" : "<msub><mi>" + letter + "</mi><mi>" + below.join(",") + "</mi></msub>";
}

// T_i as T_3: the place stands where the letter did.
function indexedMarkup(symbol, index) {
  const markup = symbolMarkup(symbol);
  if (index === 0) return markup;
  const placed = markup.replace(/i(<\/mi>(?:<mo>′<\/mo>)?<\/msub(?:sup)?>)$/, index + "$1");
  return placed === markup ? "<msub><mrow>" + markup + "</mrow><mn>" + index + "</mn></msub>" : placed;
}

// Plain text in which names such as h_ef are set as the formulas set them; other names, such as those of fields, stay.
function textWithSymbols(text) {
  return text.replace(/ - /g, " − ").split(/([A-Za-z]\w*'?_[A-Za-z0-9]\w*)/).map((piece, place) => (place % 2 === 1 && (texts.symbols[piece] || /^[A-Z]_/.test(piece)) ? math(symbolMarkup(piece)) : piece));
}

// A printed number. A power of ten is set as a power, and a negative number inside a formula stands in parentheses.
function numberMarkup(text, inside) {
  const [digits, exponent] = text.split("×10");
  let markup = "<mn>" + digits + "</mn>";
  if (exponent !== undefined) markup = "<mrow>" + markup + "<mo>×</mo><msup><mn>10</mn><mn>" + plainExponent(exponent) + "</mn></msup></mrow>";
  return inside && text.startsWith("−") ? "<mrow><mo>(</mo>" + markup + "<mo>)</mo></mrow>" : markup;
}

function plainExponent(raised) {
  return [...raised].map((sign) => {
    const place = "⁰¹²³⁴⁵⁶⁷⁸⁹".indexOf(sign);
    return place >= 0 ? String(place) : sign === "⁻" ? "−" : sign === "^" ? "" : sign;
  }).join("");
}

// The template with each gap filled by what `fillGap` says for its symbol.
function filled(row, fillGap) {
  let markup = "";
  for (const sign of row.f) {
    const place = sign.codePointAt(0) - GAP_FIRST;
    markup += place >= 0 && place < row.y.length ? fillGap(row.y[place]) : sign;
  }
  return markup;
}

function symbolic(row) {
  return filled(row, symbolMarkup);
}

// The formula with the numbers put in that stand before it in its section; a quantity that a sum runs over keeps its
// symbol, for its values stand in the rows above.
function withNumbers(row, values, system) {
  return filled(row, (symbol) => {
    const known = values.get(symbol);
    if (known === undefined || known.index > 0 || known.value === null) return symbolMarkup(symbol);
    const text = shown(known.value, known.kind, { from: system, to: system, reading: "base" });
    return numberMarkup(partsOfShown(text).number, true);
  });
}

// A unit such as N^(1/2)·mm^(−1) with its powers raised.
function unitMarkup(unit) {
  return unit.split("·").map((factor) => {
    const [name, power] = factor.split("^");
    if (power === undefined) return "<mtext>" + name + "</mtext>";
    return "<msup><mtext>" + name + "</mtext><mtext>" + power.replace(/[()]/g, "") + "</mtext></msup>";
  }).join("<mtext>·</mtext>");
}

function quantityMarkup(text) {
  const { number, unit } = partsOfShown(text);
  return numberMarkup(number, false) + (unit === "" ? "" : "<mspace width=\"0.25em\"></mspace>" + unitMarkup(unit));
}
