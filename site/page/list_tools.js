// What stands beneath a list of the form beside the button that adds to it: the whole list in one stroke.

// Where nothing else is known, feet stand so far in from the sides.
const FOOT_INSET_MM = 100;
const FOOT_CORNERS = [["front left", -1, -1], ["front right", 1, -1], ["rear right", 1, 1], ["rear left", -1, 1]];

// A length that a tool asks for, in the unit of the page.
class LengthInput {
  constructor(key, label, length_mm) {
    Object.assign(this, { length_mm, units: null, kind: partOf("cabinet").fields.find((field) => field.key === "width_mm").kind });
    this.input = make("input", { type: "text", inputmode: "decimal", size: 6, "data-key": key, "aria-label": label });
    this.unit = make("span", { class: "unit" });
    this.element = [this.input, " ", this.unit];
  }

  refresh() {
    if (this.units === unitSystem.now) return;
    const now = this.units === null ? this.length_mm : this.value_mm();
    this.units = unitSystem.now;
    this.unit.textContent = engineSays((engine) => engine.unit_text(this.kind, unitSystem.now, "field"));
    if (Number.isFinite(now)) this.input.value = engineSays((engine) => engine.field_text(now, this.kind, unitSystem.now));
  }

  value_mm() {
    return engineSays((engine) => engine.field_value(this.input.value, this.kind, this.units));
  }
}

// Four feet at the corners, as large as the first that is there.
class FeetAtCorners {
  constructor(seat) {
    this.seat = seat;
    this.inset = new LengthInput("feet inset", "Middle of each foot in from the sides", FOOT_INSET_MM);
    this.told = make("span", { class: "note", role: "status" });
    this.element = make("p", { class: "tools", role: "group", "aria-label": "Four feet at the corners" },
      "Four feet at the corners, the middle of each in from the sides by ", this.inset.element, " ",
      make("button", { type: "button", class: "tool", "data-key": "set feet", click: () => this.set() }, "Set them"), this.told);
  }

  refresh() {
    this.inset.refresh();
  }

  set() {
    const project = this.seat.project();
    const inset = this.inset.value_mm();
    const [x, y] = ["width_mm", "depth_mm"].map((key) => project.at("cabinet." + key) / 2 - inset);
    if (!(x > 0 && y > 0)) {
      this.told.textContent = " No feet were set: width and depth of the cabinet have to be given, and leave room.";
      return;
    }
    const [like = partOf("foot").fresh] = project.listAt("cabinet.feet");
    project.change([{ path: "cabinet.feet", value: FOOT_CORNERS.map(([name, right, rear]) => ({ ...like, name, at_mm: [right * x, rear * y] })) }]);
    project.rest();
    this.told.textContent = " 4 feet are set.";
  }
}

// Contents one above the other, in the order of the table from below.
class StackedContents {
  constructor(seat) {
    this.seat = seat;
    this.from = new LengthInput("stack from", "Underside of the first above the floor", 100);
    this.between = new LengthInput("stack between", "Room between two of them", 0);
    this.told = make("span", { class: "note", role: "status" });
    this.element = make("p", { class: "tools", role: "group", "aria-label": "Stack the contents" },
      "One above the other, in this order, the first ", this.from.element, " above the floor, with ", this.between.element, " between: ",
      make("button", { type: "button", class: "tool", "data-key": "stack", click: () => this.set() }, "Stack them"), this.told);
  }

  refresh() {
    this.element.hidden = this.seat.project().listAt("contents").length < 2;
    this.from.refresh();
    this.between.refresh();
  }

  set() {
    const project = this.seat.project();
    const between = this.between.value_mm();
    let bottom = this.from.value_mm();
    const edits = project.listAt("contents").map((content, place) => {
      const edit = { path: "contents[" + place + "].bottom_mm", value: bottom };
      bottom += valueAt(content, "size_mm[2]") + between;
      return edit;
    });
    if (!Number.isFinite(bottom)) {
      this.told.textContent = " Nothing was stacked: one of the heights is no length.";
      return;
    }
    project.change(edits);
    project.rest();
    this.told.textContent = " Stacked.";
  }
}

const LIST_TOOLS = { content: StackedContents, foot: FeetAtCorners, anchor: AnchorPatterns };
