// Controls: what stands in the form for one field of the project file. Each knows its path, keeps what was typed, and
// is corrected from the project unless it already says the same.

// `seat` is what all controls of a form share: the project as it is now, and the faults by path.
class Control {
  constructor(seat, field, path, label) {
    this.seat = seat;
    this.field = field;
    this.path = path;
    this.label = label;
    this.faultId = freshId("fault");
    this.faultPlace = make("span", { class: "fault", id: this.faultId, hidden: true });
    this.inputs = [];
    this.build();
  }

  refresh() {
    this.show();
    const faults = faultsWithin(this.seat.faults(), this.path);
    this.faultPlace.hidden = faults.length === 0;
    fill(this.faultPlace, faults.map((fault) => make("span", { "data-fault-of": fault.path }, faultText(fault, this.field))));
    for (const input of this.inputs) {
      const own = faults.some((fault) => fault.path === input.dataset.path || fault.path.startsWith(input.dataset.path + ".") || fault.path === this.path || fault.path === this.path + ".between");
      if (own) input.setAttribute("aria-invalid", "true");
      else input.removeAttribute("aria-invalid");
      const described = [input.dataset.help, own ? this.faultId : ""].filter(Boolean).join(" ");
      if (described) input.setAttribute("aria-describedby", described);
      else input.removeAttribute("aria-describedby");
    }
  }

  change(value, path = this.path) {
    this.seat.project().change([{ path, value }], "type " + path);
  }

  attributes(path, label) {
    return { "data-path": path, "data-key": path, "aria-label": label, autocomplete: "off", spellcheck: "false", blur: () => this.seat.project().rest() };
  }
}

// Where the label stands beside the control, the fault need not repeat it; nor the words of a choice, which the control offers.
function faultText(fault, field = null) {
  const problem = texts.problems[fault.problem] || fault.sentence;
  if (field !== null && field.shape === "choice" && fault.problem === "missing") return problem + ": choose one";
  return problem + (fault.allowed ? ": " + fault.allowed : "");
}

class NumberControl extends Control {
  build() {
    const { kind, count } = this.field;
    const axes = count ? axesOf(this.field) : [null];
    this.inputs = axes.map((axis, place) => {
      const path = axis === null ? this.path : within(this.path, place);
      const label = axis === null ? this.label : this.label + ", " + axis;
      const input = make("input", { ...this.attributes(path, label), class: "number", inputmode: "decimal", type: "text", maxlength: 60,
        input: () => this.type(input, path, place) });
      return input;
    });
    this.kind = kind;
    this.known = [];
    this.element = make("span", { class: count ? "control axes" : "control" }, this.inputs);
  }

  type(input, path, place) {
    const project = this.seat.project();
    let value = project.fieldValue(path, input.value, this.kind, unitSystem.now);
    if (!this.field.count) return this.change(value);
    // A list of numbers is written as a whole: absent ones take their default, and an empty list is taken away.
    const now = project.at(this.path);
    const list = Array.from({ length: this.field.count }, (_, at) => (Array.isArray(now) && at in now ? now[at] : this.field.default === undefined ? "" : this.field.default));
    list[place] = value === undefined ? "" : value;
    value = list.every((one) => one === "") ? undefined : list;
    return this.seat.project().change([{ path: this.path, value }], "type " + path);
  }

  show() {
    const project = this.seat.project();
    const system = unitSystem.now;
    const hint = this.hintedIn === system ? null : this.hint();
    this.hintedIn = system;
    this.inputs.forEach((input, place) => {
      if (hint !== null) input.placeholder = hint;
      // The engine is asked only where another number stands than before, or in other units.
      const value = project.at(input.dataset.path);
      const known = this.known[place];
      if (known && Object.is(known.value, value) && known.system === system && known.text === input.value) return;
      const text = project.fieldText(input.dataset.path, this.kind, system);
      if (input.value !== text) input.value = text;
      this.known[place] = { value, system, text };
    });
  }

  hint() {
    if (this.seat.placeholder) return this.seat.placeholder(this.field);
    if (this.field.default === undefined) return "";
    const text = engineSays((engine) => engine.field_text(this.field.default, this.kind, unitSystem.now));
    return this.roomy && text.length < 4 ? "default " + text : text;
  }
}

class TextControl extends Control {
  build() {
    const input = make("input", { ...this.attributes(this.path, this.label), class: "text", type: "text", maxlength: 250,
      input: () => this.write(input.value) });
    this.inputs = [input];
    this.element = make("span", { class: "control" }, input);
  }

  write(text) {
    const project = this.seat.project();
    const value = text === "" && this.field.absent !== "fault" ? undefined : text;
    project.change([...renameChanges(project.tree, this.path, text), { path: this.path, value }], "type " + this.path);
  }

  show() {
    const value = this.seat.project().at(this.path);
    const text = value === undefined || value === null ? "" : typeof value === "string" ? value : JSON.stringify(value);
    if (this.inputs[0].value !== text) this.inputs[0].value = text;
  }
}

class FlagControl extends Control {
  build() {
    const input = make("input", { ...this.attributes(this.path, this.label), type: "checkbox", change: () => this.change(input.checked) });
    this.inputs = [input];
    this.element = make("span", { class: "control" }, input);
  }

  show() {
    const value = this.seat.project().at(this.path);
    this.inputs[0].indeterminate = value !== undefined && value !== null && typeof value !== "boolean";
    this.inputs[0].checked = value === undefined || value === null ? Boolean(this.field.default) : value === true;
  }
}

class ChoiceControl extends Control {
  build() {
    const select = make("select", { ...this.attributes(this.path, this.label), change: () => this.change(select.value === "" ? undefined : select.value) });
    this.inputs = [select];
    this.element = make("span", { class: "control" }, select);
  }

  // A word that is none of the words stays in the list, so that what was written is kept.
  show() {
    const value = this.seat.project().at(this.path);
    const chosen = value === undefined || value === null ? "" : typeof value === "string" ? value : JSON.stringify(value);
    const words = this.field.words;
    const empty = this.seat.placeholder ? this.seat.placeholder(this.field)
      : this.field.default === undefined ? ((this.field.absent !== "fault") ? "not given" : "choose …") : "default: " + labelOfWord(this.field, this.field.default);
    const options = [["", empty], ...words.map((word) => [word, labelOfWord(this.field, word)])];
    if (!options.some(([word]) => word === chosen)) options.push([chosen, chosen]);
    const [select] = this.inputs;
    const made = JSON.stringify(options);
    if (select.dataset.made !== made) {
      select.dataset.made = made;
      fill(select, options.map(([word, label]) => make("option", { value: word }, label)));
    }
    if (select.value !== chosen) select.value = chosen;
  }
}

function labelOfWord(field, word) {
  return (field.labels && field.labels[field.words.indexOf(word)]) || word;
}

// The names of a list of numbers' places: sides of a box, or places along the axes.
function axesOf({ key, count }) {
  return (key.startsWith("size") ? ["wide", "deep", "high"] : ["x", "y", "z"]).slice(0, count);
}

function controlFor(seat, field, path, label = field.label) {
  const value = seat.project().at(path);
  if (field.shape === "number" && isRange(value)) return new RangeControl(seat, field, path, label);
  if (["choice", "flag"].includes(field.shape) && isSet(value)) return new SetControl(seat, field, path, label);
  return plainControlFor(seat, field, path, label);
}

// A control of one place, where a range is typed as "600 to 900".
function plainControlFor(seat, field, path, label = field.label) {
  const control = { number: NumberControl, numbers: NumberControl, flag: FlagControl, choice: ChoiceControl }[field.shape] || TextControl;
  return new control(seat, field, path, label);
}
