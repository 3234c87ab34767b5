// What stands beneath a row of a list: of a state, what is not aboard and what is drawn out; of an anchor, what it has
// otherwise than all the others.

const ROW_ASIDES = {
  state: {
    signature: (tree) => JSON.stringify(contentNames(tree)) + JSON.stringify(statesOf(tree).map((state) => namesInState(state))),
    make: (seat, path) => new StateContents(seat, path),
  },
  anchor: {
    signature: (tree) => String(valueAt(tree, "anchorage.rule")),
    make: (seat, path) => new OwnValues(seat, path),
  },
};

function statesOf(tree) {
  return Array.isArray(tree.states) ? tree.states : [];
}

function contentNames(tree) {
  const contents = Array.isArray(tree.contents) ? tree.contents : [];
  return contents.map((content) => content && content.name).filter((name) => typeof name === "string" && name !== "");
}

function namesInState(state) {
  const without = state && Array.isArray(state.without) ? state.without : [];
  const drawn = state && state.drawn_out_mm && typeof state.drawn_out_mm === "object" ? Object.keys(state.drawn_out_mm) : [];
  return [...new Set([...without.filter((name) => typeof name === "string"), ...drawn])];
}

// Each content with a tick for "not aboard" and how far it is drawn out. Names that no content has stay to be seen.
class StateContents {
  constructor(seat, path) {
    const tree = seat.project().tree;
    const names = [...new Set([...contentNames(tree), ...namesInState(valueAt(tree, path))])];
    const fields = partOf("state").fields;
    const [without, drawn] = ["without", "drawn_out_mm"].map((key) => fields.find((field) => field.key === key));
    this.ticks = new TicksControl(seat, { ...without, names }, within(path, "without"), without.label);
    const drawnPath = within(path, "drawn_out_mm");
    this.numbers = names.map((name) => new NumberControl(seat, { ...drawn, shape: "number", name }, within(drawnPath, name), drawn.label));
    this.controls = [this.ticks, ...this.numbers];
    this.names = names;
    this.summary = make("summary", {}, "Without and drawn out");
    this.element = make("details", { class: "state-contents" }, this.summary,
      names.length === 0 ? make("p", { class: "note" }, "There are no contents yet.") : make("div", { class: "content-lines" },
        make("p", { class: "content-line head", "aria-hidden": "true" }, make("span"), make("span", {}, without.label), make("span", {}, drawn.label, " ", make("span", { class: "unit" }, unitOfField(drawn)))),
        names.map((name, place) => make("p", { class: "content-line" }, make("span", { class: "name" }, name), this.ticks.inputs[place], this.numbers[place].element, this.numbers[place].faultPlace))),
      this.ticks.faultPlace);
    this.element.open = namesInState(valueAt(tree, path)).length > 0;
  }

  name(state) {
    this.names.forEach((name, place) => {
      this.ticks.inputs[place].setAttribute("aria-label", state + ": without " + name);
      this.numbers[place].inputs[0].setAttribute("aria-label", state + ": " + name + " drawn out, " + unitOfField(this.numbers[place].field));
    });
  }
}

class TicksControl extends Control {
  build() {
    this.inputs = this.field.names.map((name) => {
      const input = make("input", { type: "checkbox", "data-path": this.path, "data-key": this.path + " " + name,
        change: () => this.tick(name, input.checked) });
      return input;
    });
  }

  list() {
    const list = this.seat.project().at(this.path);
    return Array.isArray(list) ? list : [];
  }

  tick(name, out) {
    const rest = this.list().filter((other) => other !== name);
    this.change(out ? [...rest, name] : rest);
    this.seat.project().rest();
  }

  show() {
    const list = this.list();
    this.field.names.forEach((name, place) => {
      this.inputs[place].checked = list.includes(name);
    });
  }
}

class OwnValues {
  constructor(seat, path) {
    const rule = chosenRule(partOf("anchorage"), seat.project().tree);
    const fields = rule ? ownFields(rule) : [];
    const asForAll = { ...seat, placeholder: () => "as for all" };
    this.rows = fields.map((field) => new FieldRow(asForAll, field, within(path, field.key)));
    this.controls = this.rows;
    this.summary = make("summary", {}, "Values of its own");
    this.element = fields.length === 0 ? make("span") : make("details", { class: "own-values" }, this.summary, this.rows.map((row) => row.element));
    const item = seat.project().at(path);
    this.element.open = Boolean(item) && typeof item === "object" && fields.some((field) => field.key in item);
  }

  name(anchor) {
    this.summary.setAttribute("aria-label", anchor + ": values of its own");
  }
}

// A content that gets another name keeps it wherever states speak of it.
function renameChanges(tree, path, name) {
  const found = /^contents\[(\d+)\]\.name$/.exec(path);
  const before = found && valueAt(tree, path);
  const names = contentNames(tree);
  if (!before || typeof before !== "string" || names.filter((other) => other === before).length > 1 || names.includes(name) || !name) return [];
  return statesOf(tree).flatMap((state, place) => {
    const changes = [];
    const at = "states[" + place + "]";
    if (state && Array.isArray(state.without) && state.without.includes(before)) {
      changes.push({ path: at + ".without", value: state.without.map((other) => (other === before ? name : other)) });
    }
    const drawn = state && state.drawn_out_mm;
    if (drawn && typeof drawn === "object" && Object.hasOwn(drawn, before)) {
      changes.push({ path: at + ".drawn_out_mm", value: Object.fromEntries(Object.entries(drawn).map(([key, value]) => [key === before ? name : key, value])) });
    }
    return changes;
  });
}
