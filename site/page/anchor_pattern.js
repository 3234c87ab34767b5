// Anchors set out about each foot in one stroke: one to four, in a pattern.

const ANCHOR_PATTERNS = [
  ["one", "one, on the outer side"],
  ["across", "two, left and right"],
  ["along", "two, front and rear"],
  ["three", "three"],
  ["corners", "four, at the corners"],
];
// What a bracket at the side of a foot mostly needs; typed over by whoever has one at hand.
const PATTERN_CLEAR_MM = 60;

class AnchorPatterns {
  constructor(seat) {
    this.seat = seat;
    this.kind = partOf("anchor").fields.find((field) => field.key === "at_mm").kind;
    const [pattern, clear] = [freshId("pattern"), freshId("clear")];
    this.unit = make("span", { class: "unit" });
    this.pattern = make("select", { id: pattern, "data-key": "pattern" }, ANCHOR_PATTERNS.map(([word, label]) => make("option", { value: word }, label)));
    this.clear = make("input", { id: clear, type: "text", inputmode: "decimal", size: 6, "data-key": "pattern clear" });
    this.element = make("p", { class: "tools anchor-patterns", role: "group", "aria-label": "Anchors about each foot" },
      make("label", { for: pattern }, "Anchors about each foot: "), this.pattern,
      make("label", { for: clear }, " clear of its side by "), this.clear, " ", this.unit, " ",
      make("button", { type: "button", class: "tool", "data-key": "set pattern", click: () => this.set() }, "Set them"), this.told = make("span", { class: "note", role: "status" }));
  }

  refresh() {
    if (this.units === unitSystem.now) return;
    const clear_mm = this.units ? this.clearMm() : PATTERN_CLEAR_MM;
    this.units = unitSystem.now;
    this.unit.textContent = engineSays((engine) => engine.unit_text(this.kind, unitSystem.now, "field"));
    this.clear.value = engineSays((engine) => engine.field_text(Number.isFinite(clear_mm) ? clear_mm : PATTERN_CLEAR_MM, this.kind, unitSystem.now));
  }

  clearMm() {
    return engineSays((engine) => engine.field_value(this.clear.value, this.kind, this.units));
  }

  // Anchors are made anew: what single ones had of their own, and where they were drilled, goes; undo brings it back.
  set() {
    const project = this.seat.project();
    // What else is still to be given, or wrong, is no matter of the feet.
    const { format, cabinet = {} } = project.tree;
    const text = JSON.stringify({ format, cabinet: { ...cabinet, anchors: undefined, lifting_points: undefined } });
    const edit = engineSays((engine) => engine.patterned(text, this.pattern.value, this.clearMm()));
    const wrong = !(project.listAt("cabinet.feet").length > 0) ? "give the feet first" : !(this.clearMm() >= 0) ? "the distance is no length" : "there would be too many, or cabinet and feet have faults";
    this.told.textContent = edit ? " " + edit.value.length + " anchors are set." : " No anchors were set: " + wrong + ".";
    if (!edit) return;
    project.change([edit]);
    project.rest();
  }
}
