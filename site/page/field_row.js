// Fields as lines of a document: what it is, the value with its unit, and a note in the margin on where it is found.

class FieldRow {
  constructor(seat, field, path, label = field.label) {
    this.field = field;
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
    const axes = many ? axesOf(field) : [];
    if (many) {
      fill(this.control.element, this.control.inputs.map((input, place) => make("span", { class: "axis" }, make("span", { class: "axis-name", "aria-hidden": "true" }, axes[place]), input)));
    }
    const name = many ? make("span", { class: "label" }, textWithSymbols(label)) : make("label", { class: "label", for: first.id }, textWithSymbols(label));
    this.element = make("div", { class: "field " + field.shape },
      name,
      make("div", { class: "entry" }, this.control.element, this.unit, this.control.faultPlace),
      make("p", { class: "help", id: helpId }, textWithSymbols(field.help), field.clause && make("span", { class: "clause" }, " ", field.clause)));
  }

  refresh() {
    this.control.refresh();
    this.unit.textContent = unitOfField(this.field);
  }

  get controls() {
    return [this.control];
  }
}
