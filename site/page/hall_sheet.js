// A hall full: a schedule and a hall file, dropped or opened; their cabinets assessed, listed, drawn, saved and printed.

const HALL_TICK_MS = 150;
const HALL_NAMES_TOLD = 12;
const HALL_FAULTS_PRINTED = 400;

// Where a schedule goes that is dropped anywhere on the page.
const openHall = { sheet: null };

class HallSheet {
  constructor(host, config) {
    this.host = host;
    this.job = null;
    const button = (label, click) => make("button", { type: "button", class: "tool", "data-key": "hall " + label, click }, label);
    this.input = make("input", { type: "file", multiple: true, accept: ".csv,.tsv,.txt,.json,.jsonl,.ndjson", class: "unseen", tabindex: -1, "aria-label": "Schedule or hall file", change: () => {
      this.bring([...this.input.files]);
      this.input.value = "";
    } });
    this.stopButton = button("Stop", () => this.job && this.job.stop());
    this.csvButton = button("Save as CSV", () => this.save("csv"));
    this.linesButton = button("Save as JSON lines", () => this.save("jsonl"));
    this.printButton = button("Print a summary", () => this.print());
    this.what = make("p", { class: "hall-what" });
    this.progress = make("progress", { max: 1, value: 0, "aria-label": "Cabinets assessed" });
    this.told = make("p", { class: "hall-told", role: "status", "aria-live": "polite" });
    this.faults = make("ul", { class: "faults-list" });
    this.summary = make("ul", { class: "hall-summary", "aria-label": "Outcomes; press one to leave it out" });
    this.search = make("input", { type: "search", placeholder: "place, type, floor …", "aria-label": "Show only rows with these words", input: () => this.refreshTable() });
    this.plan = make("div", { class: "hall-plan-frame", click: (event) => this.pickOnPlan(event) });
    this.table = new HallTable((entry) => this.open(entry));
    this.detail = make("section", { class: "hall-detail", "aria-label": "The row that was picked", hidden: true });
    this.paper = make("section", { class: "paper own" });
    this.element = make("div", { class: "hall-full own-sheet", drop: (event) => this.drop(event) },
      make("div", { class: "hall-tools", role: "group", "aria-label": "Hall" }, button("Open a schedule or a hall file", () => this.input.click()), this.input, button("Take my cabinet as the only type", () => this.takeCabinet()),
        this.stopButton, this.csvButton, this.linesButton, this.printButton),
      make("div", { class: "hall-body" }, this.what, make("div", { role: "alert" }, this.faults), this.progress, this.told, this.summary, make("figure", { class: "figure" }, this.plan),
        make("p", { class: "hall-search" }, make("label", {}, "Show only rows with ", this.search)), this.table.element,
        make("p", { class: "note hall-on-paper" }, "On paper the rows stand in the printed summary; all of them stand in the saved results."), this.detail),
      this.paper);
    this.units = unitSystem.now;
    openHall.sheet = this;
    this.begin(config);
  }

  // The example, as it stood here at first.
  begin({ hall = "", hallName = "", schedule, scheduleName }) {
    if (this.job) this.job.stop();
    this.job = null;
    this.schedule = null;
    this.shut = new Set();
    this.problems = [];
    this.hall = { name: hallName, text: hall, title: "", types: [], outline: [] };
    if (this.hall.text !== "") this.takeHall(this.hall.text, this.hall.name);
    if (schedule) this.run(new Blob([schedule]), scheduleName || "the example");
    else this.refresh(true);
  }

  update() {
    if (this.units === unitSystem.now) return;
    this.units = unitSystem.now;
    this.refresh(true);
  }

  drop(event) {
    const files = event.dataTransfer ? [...event.dataTransfer.files] : [];
    if (files.length === 0) return;
    event.preventDefault();
    event.stopPropagation();
    this.bring(files);
  }

  // Hall files before schedules, so that both may come together.
  async bring(files) {
    this.problems = [];
    const isHall = (file) => /\.json$/i.test(file.name);
    for (const file of files.filter(isHall)) {
      if (file.size > FILE_BYTES_MAX) this.problems.push(file.name + ": " + texts.problems.too_long + ". A hall file has at most 1 MB.");
      else this.takeHall(await file.text(), file.name);
    }
    const [schedule, second] = files.filter((file) => !isHall(file));
    if (second) this.problems.push(second.name + " was left out: one schedule at a time.");
    if (schedule) this.run(schedule, schedule.name);
    else if (this.problems.length === 0 && this.schedule) this.run(this.schedule.blob, this.schedule.name);
    else this.refresh(true);
  }

  takeHall(text, name) {
    const said = engineSays((engine) => engine.hall(text));
    if (said.faults) this.problems.push(...said.faults.map((fault) => name + ": " + fault.sentence));
    else this.hall = { name, text, ...said.hall };
  }

  takeCabinet() {
    this.problems = [];
    this.takeHall(this.host.project().text, "Your cabinet");
    if (this.problems.length === 0 && this.schedule) this.run(this.schedule.blob, this.schedule.name);
    else this.refresh(true);
  }

  run(blob, name) {
    if (this.job) this.job.stop();
    this.schedule = { blob, name };
    this.picked = null;
    this.detail.hidden = true;
    const job = new HallJob(this.hall.text, (isLast) => this.job === job && this.refreshSoon(isLast));
    this.job = job;
    if (this.hall.text === "") {
      this.problems.push("Open a hall file first, or take your cabinet as the only type.");
      job.stop();
    } else job.run(blob);
    this.refresh(true);
  }

  refreshSoon(isLast) {
    if (isLast) {
      clearTimeout(this.timer);
      this.timer = null;
      this.refresh(true);
    } else if (!this.timer) {
      this.timer = setTimeout(() => {
        this.timer = null;
        this.refresh(false);
      }, HALL_TICK_MS + (this.job.entries.length > 2000 ? 4 * HALL_TICK_MS : 0));
    }
  }

  get entries() {
    return this.job === null ? [] : this.job.entries;
  }

  refresh(isLast) {
    const { job, hall } = this;
    const isBusy = job !== null && (job.stage === "reading" || job.stage === "assessing");
    const counts = hallCounts(this.entries);
    this.element.dataset.stage = job === null ? "empty" : job.stage;
    this.element.dataset.done = job === null ? 0 : job.done;
    if (job !== null) this.element.dataset.took = Math.round(job.took);
    this.element.setAttribute("aria-busy", String(isBusy));
    fill(this.what, "Hall: ", make("b", {}, hall.name || "none"), hall.types.length > 0 && ", " + hallCountWords(hall.types.length, "type"),
      this.schedule && [". Schedule: ", make("b", {}, this.schedule.name), ", " + hallCountWords(this.entries.length, "row")], ". Drop other files here, or open them.");
    fill(this.faults, [...this.problems, ...(job ? job.faults.map((fault) => fault.sentence) : [])].map((sentence) => make("li", {}, sentence)));
    this.progress.max = Math.max(this.entries.length, 1);
    this.progress.value = job === null ? 0 : job.done;
    this.progress.hidden = !isBusy;
    this.stopButton.disabled = !isBusy;
    for (const button of [this.csvButton, this.linesButton, this.printButton]) button.disabled = job === null || job.done === 0;
    if (isLast || !isBusy) fill(this.told, this.stageWords());
    keepingFocus(this.summary, () => fill(this.summary, HALL_OUTCOMES.filter((outcome) => counts[outcome] > 0).map((outcome) => this.summaryLine(outcome, counts[outcome]))));
    fill(this.plan, hallPlan(this.entries, hall.outline, this.picked));
    this.refreshTable();
  }

  stageWords() {
    const { job } = this;
    if (job === null) return "";
    const cut = job.isCut ? " This page takes " + HALL_ROWS_MAX + " rows; those behind them were not read. The command line reads any number." : "";
    if (job.stage === "stopped") return job.done + " of " + hallCountWords(job.entries.length, "row") + " were assessed before it was stopped." + cut;
    if (job.stage === "done") return "All of " + hallCountWords(job.entries.length, "row") + " assessed in " + (job.took / 1000).toFixed(1) + " s." + cut;
    return job.stage === "refused" ? "Nothing was assessed." : "";
  }

  summaryLine(outcome, count) {
    const isShown = !this.shut.has(outcome);
    const places = this.entries.filter((entry) => entry.told !== null && hallOutcome(entry) === outcome).slice(0, HALL_NAMES_TOLD + 1).map(({ told }) => told.row.place || "row " + told.row.number);
    const names = outcome === "holds" || outcome === "waiting" ? "" : places.slice(0, HALL_NAMES_TOLD).join(", ") + (places.length > HALL_NAMES_TOLD ? " and more" : "");
    return make("li", { "data-outcome": outcome, "data-count": count },
      make("button", { type: "button", "aria-pressed": String(isShown), "data-key": "outcome " + outcome, click: () => {
        if (isShown) this.shut.add(outcome);
        else this.shut.delete(outcome);
        this.refresh(true);
      } }, hallSwatch(outcome), make("b", {}, String(count)), " " + HALL_WORDS[outcome].toLowerCase(), !isShown && " (left out)"),
      names !== "" && make("span", { class: "note" }, " " + names));
  }

  refreshTable() {
    const words = this.search.value.trim().toLowerCase();
    const fits = ({ record, told }) => words === "" || (told === null ? record.text : [told.row.place, told.row.type_name, told.row.load_out, told.row.floor, told.row.storey, record.text].join(" ")).toLowerCase().includes(words);
    this.table.show(this.entries.filter((entry) => !this.shut.has(hallOutcome(entry)) && fits(entry)));
  }

  pickOnPlan(event) {
    const svg = this.plan.querySelector("svg");
    const entry = svg && hallEntryAt(svg, this.entries, event);
    if (!entry) return;
    this.table.reveal(entry);
    this.open(entry);
  }

  // What there is to say of one row, and the way to its whole check.
  async open(entry) {
    this.picked = entry;
    this.detail.hidden = false;
    fill(this.plan, hallPlan(this.entries, this.hall.outline, entry));
    const { record, told } = entry;
    const text = told === null ? null : this.job.projectText(entry);
    fill(this.detail,
      make("h3", {}, told && told.row.place ? "Place " + told.row.place : "Row " + record.number),
      told === null ? make("p", {}, "Not yet assessed.") : make("p", { "data-outcome": hallOutcome(entry) }, make("b", {}, HALL_WORDS[hallOutcome(entry)]), ". ", told.row.outcome && hallWhy(told)),
      told && told.sentences.length > 0 && make("ul", { class: "faults-list" }, told.sentences.map((sentence) => make("li", {}, sentence))),
      make("p", { class: "note" }, "Row " + record.number + ", line " + record.line + " of the schedule: ", make("code", {}, record.text)));
    if (text === null) return;
    const address = await hallCheckAddress(text);
    if (this.picked !== entry) return;
    this.detail.append(make("p", { class: "onward" },
      address && [make("a", { href: address, target: "_blank", rel: "noopener" }, "Open its whole check"), " (another window) · "],
      make("button", { type: "button", class: "plain", "data-key": "hall project", click: () => saveText(fileName("hall " + told.row.place), "application/json", projectFileText(JSON.parse(text)) + "\n") }, "Save it as a project file")));
  }

  save(form) {
    const name = fileName("results " + (this.schedule ? this.schedule.name.replace(/\.\w+$/, "") : "hall")).replace(/\.json$/, "");
    if (form === "csv") saveText(name + ".csv", "text/csv", hallCsv(this.job));
    else saveText(name + ".jsonl", "application/x-ndjson", hallJsonLines(this.job));
  }

  print() {
    const counts = hallCounts(this.entries);
    const told = this.entries.filter((entry) => !["holds", "waiting"].includes(hallOutcome(entry)));
    fill(this.paper,
      make("p", { class: "kicker" }, "A hall full"), make("h1", {}, this.hall.title || this.hall.name || "Hall"),
      make("p", {}, "Schedule " + this.schedule.name + ", " + hallCountWords(this.entries.length, "row") + ", engine " + texts.engine + "."),
      make("div", { class: "paper-cautions" }, texts.cautions.map((caution) => make("p", { class: "caution", "data-caution": true }, caution))),
      make("ul", { class: "hall-summary" }, HALL_OUTCOMES.filter((outcome) => counts[outcome] > 0).map((outcome) => make("li", {}, hallSwatch(outcome), make("b", {}, String(counts[outcome])), " " + HALL_WORDS[outcome].toLowerCase()))),
      hallPlan(this.entries, this.hall.outline, null),
      make("h2", {}, "What does not hold, cannot be said, or has faults"),
      told.length === 0 ? make("p", {}, "Nothing.") : make("table", { class: "hall-table" },
        make("thead", {}, make("tr", {}, HALL_COLUMNS.map((column) => make("th", { scope: "col" }, column.head)))),
        make("tbody", {}, told.slice(0, HALL_FAULTS_PRINTED).map((entry) => make("tr", {}, HALL_COLUMNS.map((column) => make("td", { class: column.id }, column.text(entry.told))))))),
      told.length > HALL_FAULTS_PRINTED && make("p", {}, "And " + (told.length - HALL_FAULTS_PRINTED) + " more; the saved results have them all."));
    const root = document.documentElement;
    root.dataset.printing = "sheet";
    this.host.toggleAttribute("data-printing", true);
    addEventListener("afterprint", () => {
      delete root.dataset.printing;
      this.host.toggleAttribute("data-printing", false);
      fill(this.paper);
    }, { once: true });
    print();
  }
}

function hallCountWords(count, word) {
  return count + " " + word + (count === 1 ? "" : "s");
}

// The address of the whole check with a project in it; none where it is too long, or this page has no whole check.
async function hallCheckAddress(text) {
  const link = wholeCheckAddress();
  const data = await packed(text);
  if (!link || data.length > ADDRESS_BYTES_MAX) return null;
  const units = unitSystem.now;
  return link.startsWith("#") ? addressOf({ data, units, place: "check" }) : "check.html" + addressOf({ data, units, place: "" });
}
