// The whole input as a document: under each question the parts of the project file that answer it.

const FORM_SECTIONS = [
  { id: "stands", title: "What stands there", parts: ["project", "cabinet", "frame", "content", "state"] },
  { id: "floor", title: "What it stands on", parts: ["foot", "slab", "edges", "boundary", "opening", "floor", "raised", "casters", "standing"] },
  { id: "shaken", title: "How hard it is shaken", parts: ["site", "motion", "shake_table"] },
  { id: "holds", title: "What holds it down", parts: ["anchor", "anchorage", "drilling", "neighbour", "row"] },
  { id: "frame", title: "How its frame is built", parts: ["structure"] },
  { id: "lifted", title: "How it comes to its place", parts: ["moving", "lifting_point", "lifting"] },
];
// Keys of the file itself that nobody types.
const UNTYPED_KEYS = { project: ["format", "written_by", "last_answer"] };

class Form {
  constructor(seat) {
    this.seat = seat;
    this.blocks = new Map(texts.parts.map((part) => [part.id, part.presence === "list" ? new ListTable(seat, part) : new PartBlock(seat, part, UNTYPED_KEYS[part.id])]));
    this.sections = FORM_SECTIONS.map(({ id, title, parts }) => make("section", { class: "question", "data-question": id, "aria-label": title },
      make("h2", {}, title), parts.map((part) => this.blocks.get(part)).filter(Boolean).map((block) => block.element)));
    const jumps = FORM_SECTIONS.flatMap(({ parts }) => parts).map((id) => this.blocks.get(id)).filter(Boolean).map((block) => (
      block.jump = make("li", {}, make("button", { type: "button", class: "link", click: () => this.jump(block) }, block.part.title))));
    this.element = make("div", { class: "form" }, make("nav", { class: "jumps", "aria-label": "Parts of the input" }, make("ul", {}, jumps)), this.sections);
  }

  jump(block) {
    const heading = block.element.querySelector("h3");
    heading.scrollIntoView({ block: "start" });
    heading.focus({ preventScroll: true });
  }

  refresh() {
    for (const block of this.blocks.values()) {
      // What belongs to a part comes and goes with it: the edges with the slab.
      const owner = keysOf(block.part.path.replace("[]", "")).slice(0, -1);
      block.element.hidden = owner.length > 0 && this.seat.project().at(pathOf(owner)) === undefined;
      if (block.jump) block.jump.hidden = block.element.hidden;
      block.refresh();
    }
  }

  // Brings the reader to what a fault is about: the field itself, or the part that should hold it.
  show(path) {
    return showField(this.element, path) || this.showPart(path);
  }

  showPart(path) {
    const keys = keysOf(path);
    while (keys.length > 0) {
      const part = partAt(pathOf(keys)) || partAt(pathOf(keys) + "[]");
      if (part && this.blocks.has(part.id)) {
        this.jump(this.blocks.get(part.id));
        return true;
      }
      keys.pop();
    }
    return false;
  }
}

function showField(root, path) {
  const inputs = [...root.querySelectorAll("[data-path]")];
  const found = inputs.find((input) => input.dataset.path === path)
    || inputs.find((input) => input.dataset.path.startsWith(path + "["))
    || inputs.find((input) => path.startsWith(input.dataset.path + "[") || path.startsWith(input.dataset.path + "."));
  if (!found) return false;
  const closed = found.closest("details");
  if (closed) closed.open = true;
  found.scrollIntoView({ block: "center" });
  found.focus({ preventScroll: true });
  return true;
}

// A few named fields, for worksheets: `contents[*].mass_kg` is that field of every content, `site.*` all of a part.
class FewFields {
  constructor(seat, patterns) {
    this.seat = seat;
    this.patterns = patterns;
    this.rows = [];
    this.element = make("div", { class: "form few" });
  }

  refresh() {
    const { tree } = this.seat.project();
    const wanted = this.patterns.flatMap((pattern) => expandedPaths(pattern, tree));
    // Two rules may have fields of the same names and mean others.
    const signature = wanted.map(({ path, label, field }) => path + " " + label + " " + field.help).join("\n");
    if (signature !== this.signature) {
      this.signature = signature;
      this.rows = wanted.map(({ path, field, label }) => new FieldRow(this.seat, field, path, label));
      // Where a worksheet asks for all fields of a part, it asks for the place before them, right after the rule.
      const pickers = this.patterns.filter((pattern) => pattern.endsWith(".*"))
        .flatMap((pattern) => placePickers(this.seat, partAt(pattern.slice(0, -2)), tree));
      const after = this.rows.findIndex((row) => row.field.key === "rule") + 1;
      this.rows.splice(after, 0, ...pickers);
      keepingFocus(this.element, () => fill(this.element, this.rows.map((row) => row.element)));
    }
    for (const row of this.rows) row.refresh();
  }

  show(path) {
    return showField(this.element, path);
  }
}

// Feet and anchors often have the same names.
function listSubject(list, item, place) {
  const kind = { "cabinet.feet": "foot ", "cabinet.anchors": "anchor " }[list] || "";
  return kind + ((item && item.name) || "number " + (place + 1));
}

function expandedPaths(pattern, tree) {
  const list = /^(.*)\[\*\](.*)$/.exec(pattern);
  if (list) {
    const items = valueAt(tree, list[1]);
    return (Array.isArray(items) ? items : []).flatMap((item, place) => expandedPaths(within(list[1], place) + list[2], tree)
      .map((found) => ({ ...found, label: listSubject(list[1], item, place) + ": " + found.label.toLowerCase() })));
  }
  if (pattern.endsWith(".*")) {
    const path = pattern.slice(0, -2);
    return fieldsOf(path, tree).map((field) => ({ path: within(path, field.key), field, label: field.label }));
  }
  const field = fieldAt(pattern, tree);
  return field === null ? [] : [{ path: pattern, field, label: field.label }];
}
