// What to ask the owner of the floor: made from the fields themselves, with what may stand there, what waits for the
// answer, what the file says, and room to write.

const QUESTION_HEADS = ["What to ask", "Allowed", "What waits for it", "In the file", "Answer"];
const QUESTION_WORDS_MAX = 6;

class OwnerQuestions {
  constructor() {
    this.body = make("div", { class: "wide", tabindex: 0, role: "group", "aria-label": "Questions" });
    this.element = make("section", { class: "owner-questions" }, this.body,
      make("p", { class: "note" }, "Ask for answers in writing and with their source. A limit on this page belongs to whoever gives it."));
  }

  update(assessment, tree) {
    fill(this.body, make("table", {},
      make("thead", {}, make("tr", {}, QUESTION_HEADS.map((head) => make("th", { scope: "col" }, head)))),
      questionGroups(tree), siteQuestions(tree)));
  }
}

function questionGroups(tree) {
  const floor = valueAt(tree, "floor.kind");
  const put = texts.asked.filter((asked) => asked.put === "always" || asked.put === floor || !["on-ground", "suspended"].includes(floor));
  const groups = [];
  for (const asked of put) {
    // Edges, boundaries and openings stand with their slab.
    const head = ["edges", "boundary", "opening"].includes(asked.part) ? "slab" : asked.part;
    if (groups.length === 0 || groups[groups.length - 1].head !== head) groups.push({ head, runs: [] });
    const { runs } = groups[groups.length - 1];
    if (asked.instead && runs.length > 0) runs[runs.length - 1].push(asked);
    else runs.push([asked]);
  }
  return groups.map(({ head, runs }) => questionGroup(partOf(head).title, runs.flatMap((run) => {
    const isGiven = run.some((asked) => questionAnswer(asked, tree) !== null);
    return run.map((asked) => question(asked, tree, isGiven));
  })));
}

function questionGroup(title, rows) {
  return make("tbody", {}, make("tr", {}, make("th", { colspan: QUESTION_HEADS.length, scope: "rowgroup" }, title)), rows);
}

function question(asked, tree, isGiven) {
  const part = partOf(asked.part);
  const field = part.fields.find((one) => one.key === asked.key);
  const given = questionAnswer(asked, tree);
  const isThere = valueAt(tree, part.path) instanceof Object;
  const assumed = field && isThere ? sayingOf(field.default, field) : null;
  const says = given || (isGiven ? "–" : assumed === null ? null : "assumed: " + assumed);
  return questionRow((asked.instead ? "or: " : "") + (field ? field.label : part.title), field ? allowedText(field) : allowedOfPart(part), asked.why, says);
}

function questionRow(label, allowed, why, says) {
  const isOpen = says === null || says.startsWith("to be asked");
  const cells = [textWithSymbols(label), allowed, why, says === null ? "to be asked" : says, null];
  return make("tr", { class: isOpen ? "marked" : null },
    cells.map((cell, place) => make("td", { class: cell === null ? "room" : null, "data-label": QUESTION_HEADS[place] }, cell)));
}

// What the file says to a question, or null.
function questionAnswer(asked, tree) {
  const part = partOf(asked.part);
  const found = valueAt(tree, part.path.replace("[]", ""));
  const field = part.fields.find((one) => one.key === asked.key);
  if (field) return found instanceof Object ? sayingOf(found[asked.key], field) : null;
  if (Array.isArray(found)) return String(found.length);
  if (!(found instanceof Object)) return null;
  // An edge that nobody gave counts as far, which the owner is told, because it is only right where it is so.
  const said = part.fields.map((one) => [one.key, sayingOf(found[one.key], one)]);
  const given = said.filter(([, saying]) => saying !== null).map(([side, saying]) => side + " " + saying);
  const far = said.filter(([, saying]) => saying === null).map(([side]) => side);
  return [...given, ...(far.length > 0 ? ["assumed far: " + far.join(", ")] : [])].join("; ");
}

function siteQuestions(tree) {
  const part = partOf("site");
  const rule = chosenRule(part, tree);
  if (rule === null) return questionGroup(part.title, [questionRow("Rule", "the seismic rule that holds there", "how hard it is pushed", null)]);
  const fields = rule.fields.filter((field) => !texts.not_of_site.some((head) => field.key.startsWith(head)));
  return questionGroup(part.title + ": " + rule.title, fields.map((field) => {
    const [given, assumed] = [sayingOf(tree.site[field.key], field), sayingOf(field.default, field)];
    return questionRow(field.label, allowedText(field), "how hard it is pushed", given || (assumed === null ? null : "assumed: " + assumed));
  }));
}

function typedText(number, field) {
  return engineSays((engine) => engine.field_text(number, field.kind, unitSystem.now));
}

// Groups of three in front of the decimal point, as the engine prints them.
function inGroups(text) {
  const [whole, ...rest] = text.split(".");
  return [whole.length < 5 ? whole : whole.replace(/\B(?=(\d{3})+$)/g, "\u00a0"), ...rest].join(".");
}

function withUnit(text, field) {
  const unit = unitOfField(field);
  return unit === "" ? text : text + " " + unit;
}

function sayingOf(value, field) {
  if (value === undefined || value === null) return null;
  // What is left open in the file is asked too, and the owner sees what it is thought to be.
  if (Array.isArray(value.between)) return "to be asked: " + value.between.map((end) => sayingOf(end, field)).join(" to ");
  if (Array.isArray(value.one_of)) return "to be asked: " + value.one_of.map((one) => sayingOf(one, field)).join(" or ");
  if (field.shape === "flag") return value === true ? "yes" : "no";
  if (field.shape === "choice") {
    const place = field.words.indexOf(value);
    return place < 0 ? String(value) : field.labels[place] || value;
  }
  if (Array.isArray(value)) return value.map((one) => withUnit(typedText(one, field), field)).join(", ");
  return typeof value === "number" ? withUnit(typedText(value, field), field) : String(value);
}

function allowedText(field) {
  if (field.shape === "flag") return "yes or no";
  if (field.shape === "choice") return field.words.length > QUESTION_WORDS_MAX ? "one of the list" : field.words.map((word, place) => field.labels[place] || word).join("; ");
  if (field.min === undefined) return "a text";
  const ends = withUnit([field.min, field.max].map((end) => inGroups(typedText(end, field))).join(" to "), field);
  return field.shape === "numbers" ? field.count + " numbers, " + ends : ends;
}

function allowedOfPart(part) {
  const [first] = part.fields;
  return first.shape === "number" ? "each in " + unitOfField(first) : "each with its place and size";
}
