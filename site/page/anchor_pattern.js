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
      make("button", { type: "button", class: "tool", "data-key": "set pattern", click: () => this.set() }, "Set them"));
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
    const edit = engineSays((engine) => engine.patterned(project.text, this.pattern.value, this.clearMm()));
    if (!edit) return this.seat.say("No anchors were set: there are no feet, the distance is no length, or the input has faults.");
    project.change([edit]);
    project.rest();
    return this.seat.say(edit.value.length + " anchors set about the feet");
  }
}

// What stands beneath a list of the form beside the button that adds to it.
const LIST_TOOLS = { anchor: AnchorPatterns };
