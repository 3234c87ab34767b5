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

// The unit of height of racks, 1.75 in (IEC 60297-3-100, EIA-310).
const RACK_UNIT_MM = 44.45;
const UNIT_PLACE = /^U\s*(\d+)$/i;
const UNIT_COUNT = /^([\d.]+)\s*U$/i;

// What there is for contents beside adding one.
class ContentTools {
  constructor(seat) {
    this.stacked = new StackedContents(seat);
    this.pasted = new PastedContents(seat);
    this.element = make("div", {}, this.stacked.element, this.pasted.element);
  }

  refresh() {
    this.stacked.refresh();
    this.pasted.refresh();
  }
}

// Lines of a spreadsheet, or typed ones, in place of the contents: name, mass, underside, height, and width and depth where
// they are known. "U12" is the lower edge of the twelfth rack unit, "4U" four of them.
class PastedContents {
  constructor(seat) {
    this.seat = seat;
    this.fields = Object.fromEntries(partOf("content").fields.map((field) => [field.key, field]));
    this.first = new LengthInput("first unit", "Lower edge of the first rack unit above the floor", 100);
    this.units = make("span", {});
    this.area = make("textarea", { rows: 5, "data-key": "paste", "aria-label": "Contents, one a line", spellcheck: "false", placeholder: "recorder; 180; U1; 4U\nbattery; 240; U5; 6U; 450; 900" });
    this.told = make("p", { class: "note", role: "status" });
    this.element = make("details", { class: "fold paste" }, make("summary", {}, "All of them from a table"),
      make("p", { class: "note" }, "A line for each, from a spreadsheet or typed: name; mass; underside above the floor; height; width; depth, in ", this.units,
        ". The last two may be left out. U12 stands for the lower edge of the twelfth rack unit, and 4U for the height of four."),
      make("p", {}, "The first rack unit begins ", this.first.element, " above the floor."), this.area,
      make("p", { class: "tools" }, make("button", { type: "button", class: "tool", "data-key": "take lines", click: () => this.take() }, "Take these lines in place of the contents")), this.told);
  }

  refresh() {
    this.first.refresh();
    this.units.textContent = unitOfField(this.fields.mass_kg) + " and " + unitOfField(this.fields.bottom_mm);
  }

  number(text, kind) {
    return text === undefined || text === "" ? NaN : engineSays((engine) => engine.field_value(text, kind, unitSystem.now));
  }

  length(text) {
    const [place, count] = [UNIT_PLACE, UNIT_COUNT].map((form) => form.exec(text || ""));
    if (place) return this.first.value_mm() + (Number(place[1]) - 1) * RACK_UNIT_MM;
    return count ? Number(count[1]) * RACK_UNIT_MM : this.number(text, this.fields.bottom_mm.kind);
  }

  item(line, number) {
    // Where cells are not parted by commas, a comma is a decimal point; before three digits it may part thousands as well,
    // and such a cell is left as it is, which is no number.
    const parting = line.includes("\t") ? "\t" : line.includes(";") ? ";" : ",";
    const [name, ...cells] = line.split(parting).map((cell) => cell.trim());
    const [mass, bottom, high, wide, deep] = parting === "," ? cells : cells.map((cell) => cell.replace(/^(-?\d+),(\d{1,2}|\d{4,})(?!\d)/, "$1.$2"));
    const { fresh } = partOf("content");
    const size = [wide, deep].map((cell, axis) => (cell ? this.length(cell) : fresh.size_mm[axis]));
    const height = UNIT_PLACE.test(high || "") ? NaN : this.length(high);
    return { ...fresh, name: name || "tray " + number, mass_kg: this.number(mass, this.fields.mass_kg.kind), bottom_mm: this.length(bottom), size_mm: [...size, height] };
  }

  take() {
    const lines = this.area.value.split("\n").filter((line) => line.trim() !== "");
    const items = lines.map((line, place) => this.item(line, place + 1));
    const whole = (item) => [item.mass_kg, item.bottom_mm, ...item.size_mm].every(Number.isFinite);
    // A first line without a single number is the table's heading.
    if (items.length > 1 && !/\d/.test(lines[0])) {
      items.shift();
      lines.shift();
    }
    const wrong = items.findIndex((item) => !whole(item));
    if (items.length === 0 || wrong >= 0) {
      this.told.textContent = items.length === 0 ? "Nothing was taken: there are no lines." : "Nothing was taken: in this line mass, underside or height is missing or can be read in two ways: " + lines[wrong];
      return;
    }
    this.seat.project().change([{ path: "contents", value: items }]);
    this.seat.project().rest();
    const { kind } = this.fields.mass_kg;
    const together = engineSays((engine) => engine.field_text(items.reduce((sum, item) => sum + item.mass_kg, 0), kind, unitSystem.now));
    this.told.textContent = items.length + " contents are taken, together " + together + " " + unitOfField(this.fields.mass_kg) + ".";
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

const LIST_TOOLS = { content: ContentTools, foot: FeetAtCorners, anchor: AnchorPatterns };
