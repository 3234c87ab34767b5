// Words for what the engine says in codes. The tables come from the engine's sources; nothing here knows engineering.

const UNKNOWN_ROW = { s: "", w: "", k: 0, f: null, y: [], c: "", t: "memory", h: "given" };

// As long as the later part is away, a code that is unknown is one of its codes.
function known(table, code) {
  if (table[code] === undefined && !laterPart.isHere) throw new LaterWanted();
  return table[code];
}

function rowOf(code) {
  return { ...UNKNOWN_ROW, ...known(texts.rows, code) };
}

function checkTitle(id) {
  const check = known(texts.checks, id);
  return check ? check.title : id;
}

function wordsOf(code) {
  return code === null || code === undefined ? "" : rowOf(code).w;
}

const STATUS_WORDS = { holds: "holds", fails: "fails", not_needed: "not needed", not_covered: "not covered" };
const VERDICT_WORDS = { holds: "Holds", does_not_hold: "Does not hold", cannot_be_said: "Cannot be said" };
const ROLE_WORDS = { required: "What was checked", "before-bolting": "Before bolting", information: "For information" };
const TRUST_WORDS = {
  published: "read in the issuing text or a published book",
  secondary: "read in another text that quotes it",
  memory: "recalled, not read again",
  derived: "our own arithmetic from first principles",
};
const PART_WORDS = {
  "load-out": "Load-out",
  demand: "Demand",
  "base-reactions": "Base reactions",
  "standing-free": "Standing free",
  anchors: "Anchors",
  feet: "Feet",
  floor: "Floor",
  frame: "Frame",
  moving: "Moving",
  lifting: "Lifting",
  "shake-table": "Shake table",
  limits: "Limits",
};

// A number as the engine prints it. `style` may name digits, rounding, reading and the system the value is in.
function shown(value, kind, style = {}) {
  const { from = "si", to = unitSystem.now, reading = "plain", rounding = "nearest", digits = 0 } = style;
  return engineSays((engine) => engine.show(value, kind, from, to, reading, rounding, digits));
}

// The number and its unit apart; the engine puts one no-break space between them.
function partsOfShown(text) {
  const [number, ...unit] = text.split("\u00a0");
  return { number, unit: unit.join("\u00a0") };
}

// A sentence as a run of texts and slots: templates hold {0}, {1} ... where slots belong.
function sentenceParts(sentence) {
  return wordsOf(sentence.id)
    .split(/(\{\d+\})/)
    .filter((piece) => piece !== "")
    .map((piece) => (/^\{\d+\}$/.test(piece) ? sentence.slots[Number(piece.slice(1, -1))] : piece));
}

function slotText(slot) {
  if (typeof slot === "string") return slot;
  if (slot === undefined) return "";
  if (slot.text !== undefined) return slot.text;
  if (slot.name !== undefined) return wordsOf(slot.name);
  if (slot.check !== undefined) return checkTitle(slot.check);
  return shown(slot.value, slot.kind, { rounding: slot.rounding });
}

function sentenceCase(text) {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

// "front left", "anchor 3", "group 1": a name that the reader gave, or the kind with its number.
function subjectText(subject, tree) {
  if (!subject || subject.kind === "whole") return "";
  const list = { foot: "cabinet.feet", anchor: "cabinet.anchors" }[subject.kind];
  const item = list ? valueAt(tree, list + "[" + (subject.number - 1) + "]") : null;
  const name = item && typeof item.name === "string" ? item.name : "";
  return subject.kind === "foot" && name !== "" ? name + " foot" : subject.kind + " " + (name || subject.number);
}

// The state, the case and the direction for which a result stands; in short without the case.
function occasionText(at, report, tree, { short = false } = {}) {
  if (!at) return "";
  const state = report.states[at.state];
  const load = at.case === null || at.case === undefined ? null : report.cases[at.case];
  return [
    state && state.name,
    subjectText(at.subject, tree),
    load && !short && wordsOf(load.name),
    load && "push towards " + shown(at.direction_rad, ANGLE),
    !short && at.stiffness !== 1 && (at.stiffness < 1 ? "anchors four times softer" : "anchors four times stiffer"),
  ].filter(Boolean).join(", ");
}

// Kinds as the boundary numbers them; the page needs by name only these few.
const NUMBER = 0;
const UTILISATION = 1;
const LENGTH = 3;
const MASS = 12;
const ANGLE = 17;
const TIME = 18;
