// A project as it was typed: half-typed text included, with everything that was done to it, so that it can be undone.

const UNDO_STEPS = 200;

class Project {
  constructor(tree) {
    this.changed = new Listeners();
    this.begin(tree);
  }

  // Starts over with another tree; what was done before can no longer be undone.
  begin(tree) {
    this.past = [];
    this.future = [];
    this.typed = new Map();
    this.merging = null;
    this.put(tree);
  }

  put(tree) {
    this.tree = tree;
    this.text = JSON.stringify(tree);
    this.changed.tell(this);
  }

  at(path) {
    return valueAt(this.tree, path);
  }

  listAt(path) {
    const list = this.at(path);
    return Array.isArray(list) ? list : [];
  }

  // Makes all changes as one step. Steps that carry the same word in a row are undone together: a drag, a typed word.
  change(changes, word = null) {
    let tree = this.tree;
    for (const { path, value } of changes) tree = withValue(tree, path, value);
    this.become(tree, word);
  }

  become(tree, word = null) {
    if (word === null || word !== this.merging) {
      this.past.push(this.tree);
      if (this.past.length > UNDO_STEPS) this.past.shift();
    }
    this.merging = word;
    this.future = [];
    this.put(tree);
  }

  // The next change is a step of its own, whatever its word.
  rest() {
    this.merging = null;
  }

  undo() {
    this.step(this.past, this.future);
  }

  redo() {
    this.step(this.future, this.past);
  }

  step(from, to) {
    if (from.length === 0) return;
    to.push(this.tree);
    this.merging = null;
    this.put(from.pop());
  }

  // Remembers the text by which a number was typed, for as long as the number stands there.
  remember(path, system, text, value) {
    this.typed.set(path + " " + system, { text, value });
  }

  // The text that belongs into the field of a number.
  fieldText(path, kind, system) {
    const value = this.at(path);
    if (value === undefined || value === null) return "";
    if (isRange(value) && value.between.length === 2) return [0, 1].map((end) => this.fieldText(within(within(path, "between"), end), kind, system)).join(" to ");
    if (typeof value !== "number") return typeof value === "object" ? JSON.stringify(value) : String(value);
    const typed = this.typed.get(path + " " + system);
    if (typed && Object.is(typed.value, value)) return typed.text;
    return engineSays((engine) => engine.field_text(value, kind, system));
  }

  // What a text in a number's field means for the file: a number in SI, the text itself where it is no number, or
  // nothing where it is empty.
  fieldValue(path, text, kind, system) {
    const plain = text.trim();
    if (plain === "") return undefined;
    // "600 to 900" says that it lies between the two.
    const ends = /^(\S.*?)\s+to\s+(\S.*)$/.exec(plain);
    if (ends !== null) return { between: [1, 2].map((end) => this.fieldValue(within(within(path, "between"), end - 1), ends[end], kind, system)) };
    const value = engineSays((engine) => engine.field_value(plain, kind, system));
    if (!Number.isFinite(value)) return text;
    this.remember(path, system, text, value);
    return value;
  }
}

// What in the file says that something is not known: it lies between two numbers.
function isRange(value) {
  return value !== null && typeof value === "object" && Array.isArray(value.between);
}

// The tree of a project file. A number beyond all bounds stays as it is written, for the reader to be told of it.
function treeOf(text) {
  const tree = JSON.parse(text, (key, value, context) => {
    if (typeof value === "number" && !Number.isFinite(value)) return context ? context.source : "1e999";
    return value;
  });
  if (tree === null || typeof tree !== "object" || Array.isArray(tree)) throw new Error("no object");
  return tree;
}
