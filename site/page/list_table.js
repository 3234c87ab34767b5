// A list of the project file as a table: each row with its fields and its tools, all of them reached by keys.

const ICONS = {
  up: "M6 10V2M2.5 5.5L6 2l3.5 3.5",
  down: "M6 2v8M2.5 6.5L6 10l3.5-3.5",
  duplicate: "M1.5 4.5h6v6h-6zM4.5 4.5v-3h6v6h-3",
  remove: "M2.5 2.5l7 7M9.5 2.5l-7 7",
};

class ListTable {
  // `aside` may make something to stand beneath each row.
  constructor(seat, part) {
    this.seat = seat;
    this.part = part;
    this.path = part.path.slice(0, -2);
    this.noun = part.noun;
    this.aside = ROW_ASIDES[part.id] || null;
    this.fields = part.fields.filter((field) => !field.shape.endsWith("_of_contents"));
    this.controls = [];
    this.body = make("div", { class: "list-body" });
    this.count = make("span", { class: "count" });
    this.addButton = make("button", { type: "button", class: "tool", "data-key": "add " + this.path, click: () => this.add() }, "Add ", article(part.noun));
    const titleId = freshId("list");
    this.tools = LIST_TOOLS[part.id] ? new LIST_TOOLS[part.id](seat) : null;
    this.element = make("section", { class: "part list", "data-list": this.path, "data-part": part.id, "aria-labelledby": titleId },
      make("h3", { id: titleId, tabindex: -1 }, part.title, " ", this.count), make("p", { class: "note" }, part.help), this.body,
      make("p", { class: "tools" }, this.addButton), this.tools && this.tools.element);
  }

  items() {
    return this.seat.project().listAt(this.path);
  }

  nameOf(place) {
    const item = this.items()[place];
    const name = item && typeof item === "object" ? item.name : null;
    return typeof name === "string" && name.trim() !== "" ? name : this.noun + " " + (place + 1);
  }

  // Rows are made anew when their number changes; otherwise only what they say.
  refresh() {
    const items = this.items();
    const asides = this.aside ? this.aside.signature(this.seat.project().tree) : "";
    const signature = items.length + " " + unitSystem.now + " " + asides;
    if (this.tools) this.tools.refresh();
    this.count.textContent = items.length === 0 ? "none" : String(items.length);
    this.addButton.disabled = items.length >= (this.part.max || Infinity);
    if (signature !== this.signature) {
      this.signature = signature;
      keepingFocus(this.element, () => this.build(items.length));
    }
    for (const control of this.controls) control.refresh();
    this.name();
    for (const row of this.rows) row.faults.hidden = row.controls.every((control) => control.faultPlace.hidden);
  }

  build(length) {
    this.rows = Array.from({ length }, (_, place) => this.row(place));
    this.controls = this.rows.flatMap((row) => [...row.controls, ...(row.aside ? row.aside.controls : [])]);
    if (length === 0) return fill(this.body);
    const columns = this.fields.flatMap((field) => (field.count ? axesOf(field).map((axis, place) => ({ field, axis, place })) : [{ field, axis: null, place: 0 }]));
    const heads = this.fields.map((field) => make("th", { scope: "col", colspan: field.count || 1, title: field.help, class: field.shape },
      field.label, " ", make("span", { class: "unit" }, unitOfField(field))));
    const axes = columns.some(({ axis }) => axis !== null) && make("tr", { class: "axis-names" }, columns.map(({ axis }) => make("td", {}, axis || "")), make("td"));
    return fill(this.body, make("table", { class: "list-table" },
      make("thead", {}, make("tr", {}, heads, make("th", { scope: "col", class: "unseen-cell" }, make("span", { class: "unseen" }, "Tools"))), axes),
      this.rows.map((row) => make("tbody", {}, row.elements))));
  }

  row(place) {
    const path = within(this.path, place);
    const controls = this.fields.map((field) => plainControlFor(this.seat, field, within(path, field.key), field.label));
    const cells = controls.flatMap((control, at) => control.inputs.map((input, axis) => {
      const field = this.fields[at];
      const name = field.count ? field.label + " " + axesOf(field)[axis] : field.label;
      return make("td", { class: field.shape + (axis > 0 ? " next-axis" : ""), "data-label": name + unitWord(field) }, input);
    }));
    const tools = ["up", "down", "duplicate", "remove"].map((what) => make("button", {
      type: "button", class: "icon", "data-tool": what, "data-key": what + " " + path, click: () => this.use(what, place),
    }, draw("svg", { viewBox: "0 0 12 12", width: 12, height: 12, "aria-hidden": "true" }, draw("path", { d: ICONS[what] }))));
    const columns = cells.length + 1;
    const faults = make("tr", { class: "faults", hidden: true }, make("td", { colspan: columns }, controls.map((control) => control.faultPlace)));
    const aside = this.aside ? this.aside.make(this.seat, path, place) : null;
    const elements = [
      make("tr", { "data-row": path }, cells, make("td", { class: "row-tools" }, tools)),
      faults,
      aside && make("tr", { class: "aside" }, make("td", { colspan: columns }, aside.element)),
    ];
    return { elements: elements.filter(Boolean), controls, tools, faults, aside };
  }

  // Names of inputs and buttons hold the item's own name, which may change while they stand.
  name() {
    this.rows.forEach((row, place) => {
      const name = this.nameOf(place);
      if (row.named === name) return;
      row.named = name;
      const words = { up: "Move " + name + " up", down: "Move " + name + " down", duplicate: "Duplicate " + name, remove: "Remove " + name };
      for (const button of row.tools) {
        const what = button.dataset.tool;
        button.setAttribute("aria-label", words[what]);
        button.title = words[what];
        button.disabled = (what === "up" && place === 0) || (what === "down" && place === this.rows.length - 1);
      }
      row.controls.forEach((control, at) => control.inputs.forEach((input, axis) => {
        const field = this.fields[at];
        input.setAttribute("aria-label", name + ": " + field.label + (field.count ? ", " + axesOf(field)[axis] : "") + unitWord(field));
      }));
      if (row.aside) row.aside.name(name);
    });
  }

  use(what, place) {
    const items = [...this.items()];
    const [item] = items.slice(place, place + 1);
    let next = place;
    if (what === "remove") items.splice(place, 1);
    if (what === "duplicate") items.splice((next = place + 1), 0, { ...item, ...this.freshName(item) });
    if (what === "up" || what === "down") {
      next = what === "up" ? place - 1 : place + 1;
      items.splice(place, 1);
      items.splice(next, 0, item);
    }
    const name = this.nameOf(place);
    this.write(items);
    this.seat.say({ remove: name + " removed", duplicate: name + " duplicated", up: name + " moved to place " + (next + 1), down: name + " moved to place " + (next + 1) }[what]);
    this.focusTool(what, Math.min(next, items.length - 1));
  }

  add() {
    const items = this.items();
    const last = items[items.length - 1];
    this.write([...items, { ...this.part.fresh, ...this.onTop(last), ...this.freshName(last || this.part.fresh) }]);
    this.seat.say(this.nameOf(items.length) + " added");
    const first = this.element.querySelector('[data-row="' + within(this.path, items.length) + '"] input');
    if (first) first.focus();
  }

  // What is added to the contents is as large as the last of them and stands on it, where the cabinet is high enough.
  onTop(last) {
    if (this.part.id !== "content" || !last || !isBox(last)) return {};
    const bottom_mm = last.bottom_mm + last.size_mm[2];
    const fits = bottom_mm + last.size_mm[2] <= this.seat.project().at("cabinet.height_mm");
    return { size_mm: last.size_mm, bottom_mm: fits ? bottom_mm : last.bottom_mm };
  }

  // A name like the last one's that nothing else in the list has; none where items go without.
  freshName(like) {
    const named = this.fields.find((field) => field.key === "name");
    if (!named || (named.absent !== "fault" && !(like && like.name))) return {};
    const taken = new Set(this.items().map((item) => item && item.name));
    const stem = like && typeof like.name === "string" ? like.name.replace(/\s*\d+$/, "") : this.noun;
    let number = 1;
    while (taken.has(stem + " " + number)) number += 1;
    return { name: stem + " " + number };
  }

  write(items) {
    this.seat.project().change([{ path: this.path, value: items }]);
    this.seat.project().rest();
  }

  focusTool(what, place) {
    const row = this.rows[place];
    if (!row) return this.addButton.focus();
    const button = row.tools.find((tool) => tool.dataset.tool === what);
    return (button.disabled ? row.tools.find((tool) => !tool.disabled) : button).focus();
  }
}

function isBox({ bottom_mm: bottom, size_mm: size }) {
  return typeof bottom === "number" && Array.isArray(size) && size.length === 3 && size.every((side) => typeof side === "number");
}

function article(noun) {
  return (/^[aeiou]/.test(noun) ? "an " : "a ") + noun;
}

function unitWord(field) {
  const unit = unitOfField(field);
  return unit === "" ? "" : ", " + unit;
}
