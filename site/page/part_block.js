// One part of the project file in the form: its heading, what it is for, its fields; or, where it is absent and may be,
// that it is not checked and a button to give it.

// A long part that has been filled in folds what it was not given, where several such fields follow each other; a new
// one shows all of its fields.
const FOLDED_FROM = 9;
const FOLDED_GIVEN = 3;
const FOLDED_RUN = 2;

class PartBlock {
  // `hidden` are keys that the reader does not type.
  constructor(seat, part, hidden = []) {
    Object.assign(this, { seat, part, hidden });
    this.rows = [];
    this.pickers = [];
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
    for (const row of [...this.pickers, ...this.rows]) row.refresh();
    for (const { element, rows } of this.folds) if (rows.some((row) => this.isGiven(row) || faultsWithin(this.seat.faults(), row.path).length > 0)) element.open = true;
    const own = this.seat.faults().filter((fault) => fault.path === this.part.path && this.part.path !== "");
    this.fault.hidden = own.length === 0;
    fill(this.fault, own.map((fault) => make("span", { "data-fault-of": fault.path }, faultText(fault))));
  }

  build(tree) {
    const { part } = this;
    this.folds = [];
    if (!this.given) {
      this.rows = [];
      this.pickers = [];
      return fill(this.body, make("p", { class: "tools" },
        make("button", { type: "button", class: "tool", "data-key": "give " + part.id, click: () => this.give(part.fresh) }, "Give the ", part.noun)), this.tools());
    }
    const fields = fieldsOf(part.path, tree).filter((field) => !this.hidden.includes(field.key));
    this.rows = fields.map((field) => new FieldRow(this.seat, field, within(part.path, field.key)));
    const rule = part.rules === "none" ? null : chosenRule(part, tree);
    this.pickers = placePickers(this.seat, part, tree);
    // The rule itself is asked first, then the place, then what the place fills.
    const [first, ...rest] = this.folded();
    return fill(this.body, first, this.tools(), this.pickers.map((picker) => picker.element), rest,
      rule && rule.stops && make("p", { class: "note stops" }, make("b", {}, "Where this rule stops. "), textWithSymbols(rule.stops)),
      part.presence === "optional" && make("p", { class: "tools" },
        make("button", { type: "button", class: "tool", "data-key": "give " + part.id, click: () => this.give(undefined) }, "Take the ", part.noun, " away")));
  }

  isGiven(row) {
    return this.seat.project().at(row.path) !== undefined;
  }

  folded() {
    const { rows } = this;
    if (rows.length < FOLDED_FROM || rows.filter((row) => row.field.key !== "rule" && this.isGiven(row)).length < FOLDED_GIVEN) return rows.map((row) => row.element);
    const elements = [];
    let run = [];
    const fold = () => {
      const idle = run.map((row) => row.element);
      if (run.length < FOLDED_RUN) elements.push(...idle);
      else {
        const element = make("details", { class: "folded" },
          make("summary", { "data-key": "fold " + run[0].path }, "Not given, or as usual: ", make("span", { class: "count" }, run.map((row, place) => [place > 0 && ", ", textWithSymbols(row.label)]))), idle);
        this.folds.push({ element, rows: run });
        elements.push(element);
      }
      run = [];
    };
    for (const row of rows) {
      if (row.field.absent !== "fault" && !this.isGiven(row)) run.push(row);
      else {
        fold();
        elements.push(row.element);
      }
    }
    fold();
    return elements;
  }

  // Approval data stand beside the rule that asks for them.
  tools() {
    return this.part.id === "anchorage" && new ApprovalTools(this.seat).element;
  }

  give(value) {
    this.seat.project().change([{ path: this.part.path, value }]);
    this.seat.project().rest();
  }
}
