// What a map gives for a place, put into the fields of a rule: a list of places, and beside it where its values are from.
// The fields stay what counts; a place is shown as chosen only for as long as they hold its values.

class PlacePicker {
  // `path` leads to the part whose fields the table fills.
  constructor(seat, path, table) {
    Object.assign(this, { seat, path, table });
    const id = freshId("place");
    const helpId = freshId("help");
    const options = table.rows.map(([name], place) => make("option", { value: String(place) }, name));
    this.empty = make("option", { value: "" }, "choose …");
    this.select = make("select", { id, "aria-describedby": helpId, autocomplete: "off", "data-places": table.title, "data-key": "places " + path + " " + table.title,
      change: () => this.pick(), blur: () => seat.project().rest() }, this.empty, options);
    const labels = table.fields.map((key) => fieldAt(within(path, key), seat.project().tree).label).join(", ");
    this.element = make("div", { class: "field choice places" }, make("label", { class: "label", for: id }, table.title),
      make("div", { class: "entry" }, make("span", { class: "control" }, this.select)),
      make("p", { class: "help", id: helpId }, "Fills ", textWithSymbols(labels), "; any value can be typed instead. ",
        make("span", { class: "clause" }, table.source, " ", trustMark(table.trust), " ", table.trust)));
  }

  // One step, undone at once.
  pick() {
    if (this.select.value === "") return;
    this.picked = this.select.value;
    const [, ...values] = this.table.rows[Number(this.picked)];
    this.seat.project().change(this.table.fields.map((key, place) => ({ path: within(this.path, key), value: values[place] })));
    this.seat.project().rest();
  }

  // Several places may have the same values: the one that was picked is kept while it is true, else the list says nothing.
  refresh() {
    const now = this.table.fields.map((key) => this.seat.project().at(within(this.path, key)));
    const isTrue = (place) => this.table.rows[place].slice(1).every((value, field) => Object.is(value, now[field]));
    const same = this.table.rows.map((row, place) => place).filter(isTrue);
    const chosen = same.map(String).includes(this.picked) ? this.picked : same.length === 1 ? String(same[0]) : "";
    if (this.select.value !== chosen) this.select.value = chosen;
  }
}

// The pickers of the rule that is chosen in a part.
function placePickers(seat, part, tree) {
  const rule = part && part.rules !== "none" ? chosenRule(part, tree) : null;
  return ((rule && rule.places) || []).map((table) => new PlacePicker(seat, part.path, table));
}
