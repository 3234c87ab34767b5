// One part of the project file in the form: its heading, what it is for, its fields; or, where it is absent and may be,
// that it is not checked and a button to give it.

class PartBlock {
  // `hidden` are keys that the reader does not type.
  constructor(seat, part, hidden = []) {
    Object.assign(this, { seat, part, hidden });
    this.rows = [];
    this.pickers = [];
    this.folds = [];
    this.body = make("div", { class: "part-body" });
    this.fault = make("p", { class: "fault", hidden: true });
    const titleId = freshId("part");
    this.element = make("section", { class: "part", "data-part": part.id, "aria-labelledby": titleId },
      make("h3", { id: titleId, tabindex: -1 }, part.title), make("p", { class: "note" }, part.help), this.fault, this.body);
  }

  get given() {
    return this.part.path === "" || this.part.presence === "required" || this.seat.project().at(this.part.path) !== undefined;
  }

  get controls() {
    return this.rows;
  }

  refresh() {
    const { tree } = this.seat.project();
    const rule = this.part.rules === "none" ? "" : String(valueAt(tree, this.part.path + ".rule"));
    const signature = this.given + " " + rule;
    if (signature !== this.signature) {
      this.signature = signature;
      keepingFocus(this.element, () => this.build(tree));
    }
    for (const row of [...this.pickers, ...this.rows, ...this.folds]) row.refresh();
    const own = this.seat.faults().filter((fault) => fault.path === this.part.path && this.part.path !== "");
    this.fault.hidden = own.length === 0;
    fill(this.fault, own.map((fault) => make("span", { "data-fault-of": fault.path }, faultText(fault))));
  }

  build(tree) {
    const { part } = this;
    if (!this.given) {
      this.rows = [];
      this.pickers = [];
      this.folds = [];
      return fill(this.body, make("p", { class: "tools" },
        make("button", { type: "button", class: "tool", "data-key": "give " + part.id, click: () => this.give(part.fresh) }, "Give the ", part.noun)), this.tools());
    }
    const fields = fieldsOf(part.path, tree).filter((field) => !this.hidden.includes(field.key));
    this.rows = fields.map((field) => new FieldRow(this.seat, field, within(part.path, field.key)));
    const rule = part.rules === "none" ? null : chosenRule(part, tree);
    this.pickers = placePickers(this.seat, part, tree);
    this.folds = (rule && rule.folds ? rule.folds : []).map((fold) => new FieldFold(this, fold));
    // The rule itself is asked first, then the place, then what the place fills; what is folded stands last.
    const [first, ...rest] = this.rows.filter((row) => !this.folds.some((fold) => fold.rows.includes(row))).map((row) => row.element);
    return fill(this.body, first, this.tools(), this.pickers.map((picker) => picker.element), rest, this.folds.map((fold) => fold.element),
      rule && rule.stops && make("p", { class: "note stops" }, make("b", {}, "Where this rule stops. "), textWithSymbols(rule.stops)),
      part.presence === "optional" && make("p", { class: "tools" },
        make("button", { type: "button", class: "tool", "data-key": "give " + part.id, click: () => this.give(undefined) }, "Take the ", part.noun, " away")));
  }

  // Approval data stand beside the rule that asks for them.
  tools() {
    return this.part.id === "anchorage" && new ApprovalTools(this.seat).element;
  }

  // What was given is asked at once: its first field has the focus, and not the button that takes it away again.
  give(value) {
    this.seat.project().change([{ path: this.part.path, value }]);
    this.seat.project().rest();
    const first = value !== undefined && this.body.querySelector("input, select");
    if (first) first.focus();
  }
}

// Fields that most have no need of, in one fold. It opens once they are asked for, and whenever one of them is given or
// has a fault; it closes only by the reader's hand.
class FieldFold {
  constructor(block, { title, keys, asked_by: askedBy }) {
    Object.assign(this, { block, keys, askedBy, isWanted: false });
    this.rows = block.rows.filter((row) => keys.includes(row.field.key));
    this.element = make("details", { class: "fold" }, make("summary", { "data-key": "fold " + title }, title, " ", make("span", { class: "count" }, String(this.rows.length))),
      this.rows.map((row) => row.element));
  }

  refresh() {
    const { seat, part } = this.block;
    const at = (key) => seat.project().at(within(part.path, key));
    const may = (value, words) => (isSet(value) ? value.one_of : [value]).some((word) => words.includes(word));
    const wanted = this.keys.some((key) => at(key) !== undefined || faultsWithin(seat.faults(), within(part.path, key)).length > 0)
      || this.askedBy.some(([key, words]) => may(at(key), words));
    if (wanted && !this.isWanted) this.element.open = true;
    this.isWanted = wanted;
  }
}
