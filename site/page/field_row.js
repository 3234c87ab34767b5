// Fields as lines of a document: what it is, the value with its unit, and a note in the margin on where it is found.

class FieldRow {
  constructor(seat, field, path, label = field.label) {
    Object.assign(this, { seat, field, path, label });
    this.element = make("div", { class: "field " + field.shape });
    this.build();
  }

  // A number that is not known has two fields, a choice a tick for each word; so the row is made anew when that changes.
  build() {
    const { seat, field, path, label } = this;
    this.isOpen = isOpenValue(seat.project().at(path));
    this.control = controlFor(seat, field, path, label);
    this.control.roomy = true;
    const helpId = freshId("help");
    const [first] = this.control.inputs;
    const many = this.control.inputs.length > 1;
    first.id = freshId("field");
    for (const input of this.control.inputs) input.dataset.help = helpId;
    // One input takes its name from the visible label; several carry the label with their axis.
    if (!many) first.removeAttribute("aria-label");
    this.unit = make("span", { class: "unit" });
    const isSet = this.control instanceof SetControl;
    const axes = !many || isSet ? [] : this.control instanceof RangeControl ? ["from", "to"] : axesOf(field);
    if (many && !isSet) {
      fill(this.control.element, this.control.inputs.map((input, place) => make("span", { class: "axis" }, make("span", { class: "axis-name", "aria-hidden": "true" }, axes[place]), input)));
    }
    const name = many ? make("span", { class: "label" }, textWithSymbols(label)) : make("label", { class: "label", for: first.id }, textWithSymbols(label));
    fill(this.element,
      name,
      make("div", { class: "entry" }, this.control.element, this.unit, this.control.faultPlace),
      make("div", { class: "margin" },
        make("p", { class: "help" }, make("span", { id: helpId }, textWithSymbols(field.help), field.clause && [" [", field.clause, "]"]), " ", this.opener())));
    this.element.classList.toggle("open", this.isOpen);
  }

  opener() {
    if (!mayBeOpen(this.field, this.path)) return null;
    return make("button", { type: "button", class: "plain opens", "data-key": "open " + this.path, "aria-pressed": String(this.isOpen),
      "aria-label": this.label + ": not known", title: this.isOpen ? "It is known after all" : "Say what it may be instead", click: () => this.turn() }, "not known");
  }

  turn() {
    const project = this.seat.project();
    const value = project.at(this.path);
    project.change([{ path: this.path, value: this.isOpen ? closedValue(value) : openedValue(this.field, value) }]);
    project.rest();
  }

  refresh() {
    if (isOpenValue(this.seat.project().at(this.path)) !== this.isOpen) keepingFocus(this.element, () => this.build());
    this.control.refresh();
    this.unit.textContent = unitOfField(this.field);
  }

  get controls() {
    return [this.control];
  }
}
