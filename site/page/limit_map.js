// A map of two inputs: worked out by several engines at once, read by pointer, touch and keys, opened at any point.

const MAP_DELAY_MS = 350;
const MAP_FINENESS = [25, 50, 100];
const MAP_PAGE = 10;
const MAP_TABLE_SIDE = 13;
const MAP_WORDS = { holds: "holds", fails: "fails", not_covered: "not covered", not_built: "cannot be built" };
const MAP_KEYS = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1], PageUp: [0, MAP_PAGE], PageDown: [0, -MAP_PAGE] };

class LimitMap {
  // `project` gives the project that a point is taken over to.
  constructor(project) {
    this.project = project;
    this.pool = new EnginePool(mapPortion);
    this.choice = { x: null, y: null, ends: {}, count: 50 };
    this.asked = null;
    this.work = null;
    this.cursor = null;
    this.opened = null;
    this.standIn = make("div", { class: "stand-in" });
    this.pickers = make("div", { class: "map-choice" });
    this.progress = make("p", { class: "study-progress", hidden: true });
    this.frame = make("div", { class: "frame map-frame", tabindex: 0, role: "application", "aria-label": "Map. Arrow keys move, Page Up and Page Down jump, Home goes to the cabinet as it is, Enter opens the point.", "data-key": "map",
      keydown: (event) => this.key(event), pointermove: (event) => event.pointerType === "mouse" && this.point(event), pointerdown: (event) => this.point(event), dblclick: () => this.open() });
    this.caption = make("figcaption", {});
    this.reading = make("p", { class: "map-reading", role: "status", "aria-live": "polite" });
    this.opener = make("button", { type: "button", class: "tool", "data-key": "open point", disabled: true, click: () => this.open() }, "Open this point");
    this.panel = make("div", { class: "picked", hidden: true });
    this.numbers = make("div", {});
    this.table = make("details", { toggle: () => this.tell() }, make("summary", { "data-key": "map numbers" }, "The numbers"), this.numbers);
    this.element = make("div", { class: "study limit-map", "data-study": "limit-map" }, this.standIn, this.pickers, this.progress,
      make("figure", { class: "figure plot" }, this.frame, this.caption), make("div", { class: "map-read" }, this.reading, this.opener), this.panel, this.table);
    this.askLater = whenQuiet(MAP_DELAY_MS, () => this.begin());
  }

  update(assessment) {
    this.assessment = assessment;
    if (assessment.report === null || this.element.closest("details:not([open])")) return;
    const key = [assessment.text, assessment.system].join("\n");
    if (key === this.asked) return;
    this.asked = key;
    this.pool.stop();
    this.known = engineSays((engine) => engine.knobs(assessment.text));
    this.settle();
    fill(this.standIn, standInNote(assessment.report, JSON.parse(assessment.text)));
    this.renderPickers();
    this.askLater();
  }

  leave() {
    this.pool.close();
    this.asked = null;
  }

  knob(axis) {
    return this.known.knobs.find((knob) => knob.word === this.choice[axis]);
  }

  // What was chosen stays as long as the project has it.
  settle() {
    const { choice } = this;
    const has = (word) => this.known.knobs.some((knob) => knob.word === word);
    if (has(choice.x) && has(choice.y) && choice.x !== choice.y) return;
    [choice.x, choice.y] = this.known.pairs[0] || this.known.knobs.slice(0, 2).map((knob) => knob.word);
    choice.ends = {};
  }

  ends(axis) {
    return this.choice.ends[axis] || this.knob(axis).window;
  }

  renderPickers() {
    if (this.known.knobs.length < 2) return fill(this.pickers, make("p", { class: "note" }, "A map needs two inputs to turn, and this project has fewer."));
    const name = (word) => wordsOf(this.known.knobs.find((knob) => knob.word === word).name);
    const chosen = (x, y) => {
      Object.assign(this.choice, { x, y, ends: {} });
      this.restart();
    };
    const axis = (which, label) => {
      const other = which === "x" ? "y" : "x";
      const select = make("select", { "data-key": "map " + which, "aria-label": label, value: this.choice[which],
        change: () => chosen(...(which === "x" ? [select.value, this.choice.y] : [this.choice.x, select.value])) },
        this.known.knobs.filter((knob) => knob.word !== this.choice[other]).map((knob) => make("option", { value: knob.word }, sentenceCase(wordsOf(knob.name)))));
      return make("span", { class: "map-axis" }, make("span", {}, label), select, this.knob(which).words === null && ["from", "to"].map((word, place) => [" " + word + " ", this.endInput(which, place, label + " " + word)]));
    };
    const fineness = make("select", { "data-key": "map fineness", value: String(this.choice.count), change: () => {
      this.choice.count = Number(fineness.value);
      this.restart();
    } }, MAP_FINENESS.map((count) => make("option", { value: String(count) }, count + " × " + count)));
    keepingFocus(this.pickers, () => fill(this.pickers,
      make("p", { class: "map-pairs", role: "group", "aria-label": "Pairs worth looking at" }, this.known.pairs.map(([x, y]) => make("button", { type: "button", class: "plain", "data-key": "pair " + x + " " + y,
        "aria-pressed": String(x === this.choice.x && y === this.choice.y), click: () => chosen(x, y) }, sentenceCase(name(x)) + " against " + name(y)))),
      make("p", { class: "map-axes" }, axis("x", "To the right"), axis("y", "Upwards"), make("label", { class: "map-axis" }, "Points ", fineness))));
    return undefined;
  }

  endInput(which, place, label) {
    const { kind } = this.knob(which);
    const input = make("input", { type: "text", class: "number", inputmode: "decimal", maxlength: 20, autocomplete: "off", "aria-label": label, "data-key": "map end " + which + place,
      value: engineSays((engine) => engine.field_text(this.ends(which)[place], kind, unitSystem.now)),
      change: () => {
        const value = engineSays((engine) => engine.field_value(input.value.trim(), kind, unitSystem.now));
        const ends = [...this.ends(which)];
        ends[place] = value;
        // A range the wrong way round, or one that is none, is not taken.
        if (ends[0] > 0 && ends[0] < ends[1] && Number.isFinite(ends[1])) this.choice.ends[which] = ends;
        else this.spoken("The range has to rise from a number above 0.");
        this.restart();
      } });
    return [input, " ", engineSays((engine) => engine.unit_text(kind, unitSystem.now, "field"))];
  }

  restart() {
    this.pool.stop();
    this.renderPickers();
    this.askLater();
  }

  begin() {
    if (!this.element.isConnected || this.assessment.report === null || this.known.knobs.length < 2) return;
    const { text } = this.assessment;
    const { x, y, count } = this.choice;
    const places = (word, [low, high]) => engineSays((engine) => engine.map_places(text, word, low, high, count));
    this.work = new MapWork({ text, x, xs: places(x, this.ends("x")), y, ys: places(y, this.ends("y")) });
    this.cursor = null;
    this.close();
    this.element.setAttribute("aria-busy", "true");
    this.element.dataset.points = String(this.work.count);
    delete this.element.dataset.shown;
    this.goOn();
  }

  goOn() {
    const { work } = this;
    this.begun = performance.now();
    this.pool.start(work.portions(), {
      took: (answer, portion) => (portion.paint ? this.show(work, answer, portion.paint) : this.take(work, portion, answer)),
      failed: (error) => console.error(error),
      ended: (stopped) => this.ended(work, stopped),
    });
    this.renderProgress(true);
  }

  take(work, portion, answer) {
    const complete = work.take(portion, answer);
    const bar = this.progress.querySelector("progress");
    if (bar) bar.value = work.known;
    if (complete !== null) work.pictures.push(work.picture(complete, unitSystem.now, this.width()));
  }

  width() {
    return Math.min(Math.max(Math.floor(this.frame.clientWidth) || DRAWING_WIDTH_MIN, DRAWING_WIDTH_MIN), 720);
  }

  ended(work, stopped) {
    if (work !== this.work) return;
    if (!stopped && work.pictures.length > 0) {
      this.pool.start(work.pictures.splice(0), { took: (answer, portion) => this.show(work, answer, portion.paint), ended: (again) => this.ended(work, again) });
      return;
    }
    this.element.setAttribute("aria-busy", "false");
    this.element.dataset.shown = String(work.known);
    this.element.dataset.tookMs = String(Math.round(performance.now() - this.begun));
    this.renderProgress(false);
    this.tell();
  }

  renderProgress(isBusy) {
    const { known, count } = this.work;
    this.progress.hidden = !isBusy && known === count;
    keepingFocus(this.progress, () => fill(this.progress, isBusy
      ? [make("progress", { max: count, value: known, "aria-label": "How far it is" }), make("button", { type: "button", class: "plain", "data-key": "stop map", click: () => this.pool.stop() }, "Stop here")]
      : known < count && ["Stopped at " + known + " of " + count + " points. ", make("button", { type: "button", class: "plain", "data-key": "stop map", click: () => this.goOn() }, "Go on")]));
  }

  // The picture of what is known so far, with the cursor over it.
  show(work, drawing, { stride }) {
    if (work !== this.work || !drawing) return;
    this.element.dataset.stride = String(stride);
    this.svg = drawingOf(drawing);
    const [top, , right] = this.svg.querySelector(".plot-axis").getAttribute("points").split(" ").map((point) => point.split(",").map(Number));
    const bottom = Number(this.svg.querySelector(".plot-axis").getAttribute("points").split(" ")[1].split(",")[1]);
    this.box = { left: top[0], top: top[1], right: right[0], bottom };
    this.cross = draw("g", { class: "map-cursor", hidden: true }, draw("path", {}), draw("circle", { r: 4 }));
    this.svg.append(this.cross);
    fill(this.frame, this.svg);
    this.caption.textContent = sentenceCase(drawing.title);
    if (this.cursor === null) this.toPresent();
    else this.read();
  }

  // Where a value lies along an axis, from 0 to 1.
  part(axis, value) {
    const values = axis === "x" ? this.work.xs : this.work.ys;
    const on = this.knob(axis).by_ratio ? Math.log : Number;
    return (on(value) - on(values[0])) / (on(values[values.length - 1]) - on(values[0]) || 1);
  }

  nearest(axis, part) {
    const values = [...(axis === "x" ? this.work.xs : this.work.ys)];
    return values.reduce((best, value, place) => (Math.abs(this.part(axis, value) - part) < Math.abs(this.part(axis, values[best]) - part) ? place : best), 0);
  }

  toPresent() {
    this.cursor = ["x", "y"].map((axis) => this.nearest(axis, this.part(axis, this.knob(axis).now)));
    this.read();
  }

  point(event) {
    if (!this.svg) return;
    const { left, top, width, height } = this.svg.getBoundingClientRect();
    const { box } = this;
    const at = [(event.clientX - left) / width * this.svg.viewBox.baseVal.width, (event.clientY - top) / height * this.svg.viewBox.baseVal.height];
    const parts = [(at[0] - box.left) / (box.right - box.left), (box.bottom - at[1]) / (box.bottom - box.top)];
    if (parts.some((part) => part < -0.03 || part > 1.03)) return;
    this.move([this.nearest("x", parts[0]), this.nearest("y", parts[1])]);
  }

  key(event) {
    if (!this.svg || event.ctrlKey || event.metaKey || event.altKey) return;
    const way = MAP_KEYS[event.key];
    if (way) this.move([this.cursor[0] + way[0], this.cursor[1] + way[1]]);
    else if (event.key === "Home") this.toPresent();
    else if (event.key === "Enter") this.open();
    else if (event.key === "Escape") this.close();
    else return;
    event.preventDefault();
  }

  move([column, row]) {
    const within = (place, values) => Math.min(Math.max(place, 0), values.length - 1);
    const next = [within(column, this.work.xs), within(row, this.work.ys)];
    if (next.every((place, axis) => place === this.cursor[axis])) return;
    this.cursor = next;
    this.read();
  }

  read() {
    const { work, box, cursor: [column, row] } = this;
    const x = box.left + this.part("x", work.xs[column]) * (box.right - box.left);
    const y = box.bottom - this.part("y", work.ys[row]) * (box.bottom - box.top);
    this.cross.removeAttribute("hidden");
    this.cross.firstChild.setAttribute("d", "M" + x + " " + box.top + "V" + box.bottom + "M" + box.left + " " + y + "H" + box.right);
    this.cross.lastChild.setAttribute("cx", x);
    this.cross.lastChild.setAttribute("cy", y);
    const found = work.at(column, row, this.known.checks);
    this.opener.disabled = found === null || found.standing === "not_built";
    Object.assign(this.reading.dataset, { x: work.xs[column], y: work.ys[row], standing: found === null ? "unknown" : found.standing, utilisation: found && found.utilisation !== null ? found.utilisation : "" });
    this.spoken([this.placeText(), ": ", found === null ? "not worked out yet" : foundText(found)].join(""));
  }

  spoken(words) {
    fill(this.reading, textWithSymbols(sentenceCase(words) + (/\.$/.test(words) ? "" : ".")));
  }

  placeText() {
    const { work, cursor } = this;
    const value = (axis, of) => {
      const { words, kind } = this.knob(axis);
      const values = axis === "x" ? work.xs : work.ys;
      return words === null ? shown(values[of], kind, { digits: 4 }) : words[of];
    };
    return ["x", "y"].map((axis, place) => wordsOf(this.knob(axis).name) + " " + value(axis, cursor[place])).join(", ");
  }

  // The project at the point, assessed, with the working of what governs there.
  open() {
    if (!this.work || this.opener.disabled) return;
    const { work, cursor: [column, row], assessment } = this;
    const edits = engineSays((engine) => engine.map_edits(work.text, work.x, work.xs[column], work.y, work.ys[row]));
    if (edits === null || work.text !== assessment.text) return;
    const tree = edits.reduce((changing, { path, value, word }) => withValue(changing, path, word || value), JSON.parse(work.text));
    const there = new Assessment(JSON.stringify(tree), assessment.system);
    if (there.report === null) return;
    const { governing, report } = there;
    const take = () => {
      this.close();
      this.project().become(tree, "map");
    };
    this.panel.hidden = false;
    this.panel.dataset.verdict = report.verdict;
    this.panel.dataset.utilisation = governing && governing.utilisation !== null ? governing.utilisation : "";
    fill(this.panel,
      make("h4", { tabindex: -1, "data-key": "opened point" }, textWithSymbols(sentenceCase(this.placeText()))),
      make("p", {}, answerText(report.answer)),
      make("p", { class: "tools" }, make("button", { type: "button", class: "plain", "data-key": "take point", click: take }, "Give the cabinet these values"), " ",
        make("button", { type: "button", class: "plain", "data-key": "close point", click: () => this.close(true) }, "Close")),
      governing && governing.at && workingBlock(there.working(governing.at), { report, tree, at: governing.at }));
    this.panel.querySelector("h4").focus({ preventScroll: true });
  }

  close(isAsked = false) {
    if (this.panel.hidden) return;
    this.panel.hidden = true;
    fill(this.panel);
    if (isAsked) this.frame.focus({ preventScroll: true });
  }

  // The numbers behind the picture: some of them in a table, all of them in a file.
  tell() {
    if (!this.table.open || this.work === null) return;
    const { work } = this;
    const stride = (values) => Math.max(1, Math.ceil((values.length - 1) / (MAP_TABLE_SIDE - 1)));
    const [columns, rows] = [along(work.xs, stride(work.xs)), along(work.ys, stride(work.ys)).reverse()];
    const [x, y] = ["x", "y"].map((axis) => this.knob(axis));
    const value = (knob, values, place) => (knob.words === null ? shown(values[place], knob.kind) : knob.words[place]);
    const name = "Utilisation, by " + wordsOf(x.name) + " and " + wordsOf(y.name);
    fill(this.numbers,
      make("div", { class: "study-table" }, make("div", { class: "wide", tabindex: 0, role: "group", "aria-label": name }, make("table", { class: "map-table" },
        make("caption", {}, name),
        make("thead", {}, make("tr", {}, make("th", { scope: "col" }, sentenceCase(wordsOf(y.name))), columns.map((column) => make("th", { scope: "col" }, value(x, work.xs, column))))),
        make("tbody", {}, rows.map((row) => make("tr", {}, make("th", { scope: "row" }, value(y, work.ys, row)), columns.map((column) => {
          const found = work.at(column, row, this.known.checks);
          return make("td", { "data-standing": found && found.standing }, found === null ? "–" : cellWords(found));
        })))))),
        make("button", { type: "button", class: "plain", "data-key": "csv map", click: () => saveText("map.csv", "text/csv", this.csv()) }, "Save all points as CSV")));
  }

  csv() {
    const { work } = this;
    const [x, y] = ["x", "y"].map((axis) => this.knob(axis));
    const head = (knob) => {
      const unit = engineSays((engine) => engine.unit_text(knob.kind, "si", "base"));
      return wordsOf(knob.name) + (unit ? " [" + unit + "]" : "");
    };
    const value = (knob, values, place) => (knob.words === null ? String(values[place]) : knob.words[place]);
    const lines = [[head(x), head(y), "utilisation", "how it stands", "what governs, or why not"]];
    for (let row = 0; row < work.ys.length; row += 1) {
      for (let column = 0; column < work.xs.length; column += 1) {
        const found = work.at(column, row, this.known.checks);
        if (found === null) continue;
        lines.push([value(x, work.xs, column), value(y, work.ys, row), Number.isFinite(found.utilisation) && found.utilisation !== null ? String(found.utilisation) : "",
          MAP_WORDS[found.standing], found.check !== null ? checkTitle(found.check) : wordsOf(found.reason)]);
      }
    }
    return [...lines, ...texts.cautions.map((caution) => [caution])].map((cells) => cells.map(csvCell).join(",")).join("\r\n") + "\r\n";
  }
}

function cellWords(found) {
  if (found.standing === "holds" || found.standing === "fails") {
    const number = Number.isFinite(found.utilisation) && found.utilisation !== null ? shown(found.utilisation, UTILISATION, { rounding: "up" }) : "no balance";
    return found.standing === "fails" ? number + ", fails" : number;
  }
  return MAP_WORDS[found.standing];
}

function foundText(found) {
  if (found.standing === "not_built") return "cannot be built";
  if (found.standing === "not_covered") return "not covered" + (found.reason !== null ? ": " + wordsOf(found.reason) : "");
  const number = Number.isFinite(found.utilisation) && found.utilisation !== null ? ", " + shown(found.utilisation, UTILISATION, { rounding: "up" }) : "";
  return MAP_WORDS[found.standing] + number + (found.check !== null ? "; what governs is " + checkTitle(found.check) : "");
}
