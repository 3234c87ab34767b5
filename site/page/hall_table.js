// The rows of a hall as a table of any length: only those in sight are there, and the others are counted.

const HALL_SPARE_ROWS = 8;
const HALL_PAGE_ROWS = 10;

const HALL_COLUMNS = [
  { id: "number", head: "Row", text: ({ row }) => String(row.number), key: ({ record }) => record.number },
  { id: "place", head: "Place", text: ({ row }) => row.place || "–", key: ({ told }) => told && told.row.place },
  { id: "type", head: "Type", text: ({ row }) => row.type_name, key: ({ told }) => told && told.row.type_name },
  { id: "load-out", head: "Load-out", text: ({ row }) => row.load_out, key: ({ told }) => told && told.row.load_out },
  { id: "floor", head: "Floor", text: ({ row }) => row.floor, key: ({ told }) => told && told.row.floor },
  { id: "storey", head: "Storey", text: ({ row }) => row.storey, key: ({ told }) => told && told.row.storey },
  { id: "outcome", head: "Outcome", text: (told) => HALL_WORDS[hallOutcome({ told })].toLowerCase(), key: (entry) => HALL_OUTCOMES.indexOf(hallOutcome(entry)) },
  { id: "utilisation", head: "Used", text: ({ row: { outcome } }) => (outcome && outcome.utilisation !== null ? shown(outcome.utilisation, UTILISATION, { rounding: "up" }) : "–"), key: ({ told }) => (told && told.row.outcome ? told.row.outcome.utilisation : null) },
  { id: "mass", head: "Mass", text: ({ row: { outcome } }) => (outcome ? shown(outcome.mass_kg, MASS) : "–"), key: ({ told }) => (told && told.row.outcome ? told.row.outcome.mass_kg : null) },
  { id: "why", head: "What decides", text: hallWhy, key: ({ told }) => told && hallWhy(told) },
];

function hallWhy(told) {
  const { row: { outcome }, sentences } = told;
  if (!outcome) return sentences[0] || "";
  if (outcome.verdict === "cannot_be_said" && outcome.not_covered !== null) return checkTitle(outcome.not_covered) + " is not covered: " + hallReason(told);
  return outcome.governs === null ? "" : checkTitle(outcome.governs) + ", " + outcome.of;
}

class HallTable {
  constructor(open) {
    this.open = open;
    this.order = [];
    this.active = 0;
    this.sort = { id: "number", falling: false };
    this.heads = HALL_COLUMNS.map((column) => make("th", { scope: "col", class: column.id },
      make("button", { type: "button", class: "plain", "data-key": "sort " + column.id, click: () => this.sortBy(column.id) }, column.head)));
    this.above = make("tr", { class: "beyond-sight", "aria-hidden": "true" }, make("td", { colspan: HALL_COLUMNS.length }));
    this.below = make("tr", { class: "beyond-sight", "aria-hidden": "true" }, make("td", { colspan: HALL_COLUMNS.length }));
    this.body = make("tbody", {}, this.above, this.below);
    this.table = make("table", { class: "hall-table", role: "grid", "aria-label": "Cabinets of the hall", "aria-colcount": HALL_COLUMNS.length },
      make("thead", {}, make("tr", { "aria-rowindex": 1 }, this.heads)), this.body);
    this.element = make("div", { class: "hall-scroll", tabindex: -1, scroll: () => this.renderSoon(), keydown: (event) => this.key(event), click: (event) => this.click(event) }, this.whole = make("div", {}, this.table));
  }

  sortBy(id) {
    this.sort = { id, falling: this.sort.id === id && !this.sort.falling };
    this.resort();
    this.render();
  }

  show(entries) {
    this.order = [...entries];
    this.resort();
    this.active = Math.min(this.active, Math.max(this.order.length - 1, 0));
    this.render();
  }

  // Rows without the value come last, whichever way; equal ones stay in the order of the schedule.
  resort() {
    const { key } = HALL_COLUMNS.find((column) => column.id === this.sort.id);
    const keyed = this.order.map((entry) => ({ entry, value: key(entry) }));
    const way = this.sort.falling ? -1 : 1;
    const isNone = (value) => value === null || value === undefined || value === "";
    const names = new Intl.Collator("en", { numeric: true });
    keyed.sort((a, b) => {
      if (isNone(a.value) || isNone(b.value)) return isNone(a.value) - isNone(b.value) || a.entry.record.number - b.entry.record.number;
      const order = typeof a.value === "number" ? a.value - b.value : names.compare(a.value, b.value);
      return way * order || a.entry.record.number - b.entry.record.number;
    });
    this.order = keyed.map(({ entry }) => entry);
    for (const [place, column] of HALL_COLUMNS.entries()) {
      if (column.id === this.sort.id) this.heads[place].setAttribute("aria-sort", this.sort.falling ? "descending" : "ascending");
      else this.heads[place].removeAttribute("aria-sort");
    }
  }

  renderSoon() {
    if (this.waits) return;
    this.waits = true;
    requestAnimationFrame(() => {
      this.waits = false;
      this.render();
    });
  }

  rowHeight() {
    const row = this.body.querySelector("tr[data-row]");
    const height = row === null ? 0 : row.getBoundingClientRect().height;
    if (height > 0) this.height = height;
    return this.height || 36;
  }

  render() {
    const height = this.rowHeight();
    const sight = Math.ceil((this.element.clientHeight || 400) / height);
    const first = Math.max(0, Math.min(Math.floor(this.element.scrollTop / height) - HALL_SPARE_ROWS, this.order.length - sight));
    const last = Math.min(this.order.length, Math.floor(this.element.scrollTop / height) + sight + HALL_SPARE_ROWS);
    this.table.setAttribute("aria-rowcount", this.order.length + 1);
    // The height of the whole comes first and stays, or the browser would scroll up while rows are exchanged.
    this.whole.style.height = this.table.tHead.getBoundingClientRect().height + this.order.length * height + "px";
    this.above.firstChild.style.height = first * height + "px";
    this.below.firstChild.style.height = (this.order.length - last) * height + "px";
    this.above.hidden = first === 0;
    this.below.hidden = last === this.order.length;
    const focused = this.body.getRootNode().activeElement;
    const held = focused !== null && focused !== undefined && this.body.contains(focused);
    keepingFocus(this.body, () => fill(this.body, this.above, this.order.slice(first, last).map((entry, at) => this.row(entry, first + at)), this.below));
    // A row that went out of sight with the focus leaves it to the table, where keys go on from that row.
    if (held && !this.body.contains(this.body.getRootNode().activeElement)) this.element.focus({ preventScroll: true });
  }

  row(entry, place) {
    const told = entry.told || brokenRow(entry.record, "");
    const outcome = hallOutcome(entry);
    const text = (column) => (entry.told === null && column.id !== "number" ? (column.id === "outcome" ? "not yet" : "") : column.text(told));
    return make("tr", { class: outcome, "data-row": entry.record.number, "data-outcome": outcome, "data-key": "hall row " + entry.record.number,
      "aria-rowindex": place + 2, tabindex: place === this.active ? 0 : -1, "aria-selected": String(entry === this.picked) },
      HALL_COLUMNS.map((column) => {
        const words = text(column);
        return make("td", { class: column.id, title: column.id === "why" ? words : null }, words);
      }));
  }

  click(event) {
    const row = event.target.closest("tr[data-row]");
    if (row !== null) this.pick(this.order.findIndex(({ record }) => record.number === Number(row.dataset.row)));
  }

  pick(place) {
    this.active = place;
    this.picked = this.order[place];
    this.render();
    this.open(this.picked);
  }

  // Shows an entry that was picked elsewhere.
  reveal(entry) {
    this.picked = entry;
    const place = this.order.indexOf(entry);
    if (place >= 0) this.go(place, false);
    else this.render();
  }

  go(place, focus) {
    this.active = Math.max(0, Math.min(place, this.order.length - 1));
    const height = this.rowHeight();
    const head = this.table.tHead.getBoundingClientRect().height;
    const top = this.active * height;
    const { scrollTop, clientHeight } = this.element;
    if (top < scrollTop) this.element.scrollTop = top;
    else if (top + height + head > scrollTop + clientHeight) this.element.scrollTop = top + height + head - clientHeight;
    this.render();
    const row = this.body.querySelector('tr[tabindex="0"]');
    if (focus && row !== null) row.focus({ preventScroll: true });
  }

  key(event) {
    if (event.target !== this.element && event.target.closest("tr[data-row]") === null || event.ctrlKey || event.metaKey || event.altKey) return;
    const steps = { ArrowDown: 1, ArrowUp: -1, PageDown: HALL_PAGE_ROWS, PageUp: -HALL_PAGE_ROWS, Home: -Infinity, End: Infinity };
    if (event.key === "Enter" || event.key === " ") this.pick(this.active);
    else if (steps[event.key] !== undefined) this.go(this.active + steps[event.key], true);
    else return;
    event.preventDefault();
  }
}
