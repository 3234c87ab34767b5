// What can be done with the project as a whole, and the thin line that keeps the answer in sight while it is edited.

// What this browser remembers of other days, and what was there before another cabinet took its place.
const HAD_WORDS = { last: "What this browser had last", before: "What it had before that" };

class Toolbar {
  // `host` knows the project, how to begin with another one, and how to say what was done.
  constructor(host) {
    this.host = host;
    const button = (label, click, title = null) => make("button", { type: "button", class: "tool", "data-key": "tool " + label, title, click }, label);
    this.undo = button("Undo", () => this.step("undo"));
    this.redo = button("Redo", () => this.step("redo"));
    this.examples = make("select", { class: "examples", "aria-label": "Begin with an example", change: () => this.begin() });
    this.paper = make("select", { "aria-label": "Paper", change: () => choosePaper(this.paper.value) },
      [["", "paper as the printer has it"], ["A4", "A4"], ["letter", "Letter"]].map(([value, label]) => make("option", { value }, label)));
    this.element = make("div", { class: "toolbar", role: "group", "aria-label": "Project" },
      make("span", { class: "group" }, this.undo, this.redo),
      make("span", { class: "group" }, openButton("tool"), button("Save", () => saveProject(host.project()), "Save the project as a file")),
      make("span", { class: "group" }, button("Print", () => print(), "Print the calculation sheet"), this.paper),
      make("span", { class: "group" }, this.examples, button("New", () => this.beginNew(), "Begin with a bare cabinet"), button("Reset", () => host.reset(), "Back to the example")));
    this.fillExamples();
  }

  fillExamples() {
    const demos = texts.demos.map((demo, place) => [String(place), demo.title]);
    const had = Object.entries(HAD_WORDS).filter(([key]) => recalled("localStorage", key) !== null);
    fill(this.examples, make("option", { value: "" }, "Begin with …"), had.map(([value, label]) => make("option", { value }, label)), demos.map(([value, label]) => make("option", { value }, label)));
  }

  begin() {
    const { value } = this.examples;
    this.examples.value = "";
    if (value === "") return;
    const text = value in HAD_WORDS ? recalled("localStorage", value) : texts.demos[Number(value)].text;
    if (text) readersCabinet.receive(text, value in HAD_WORDS ? "What this browser had" : "The example");
    this.fillExamples();
  }

  beginNew() {
    readersCabinet.take(newTree());
  }

  step(what) {
    this.host.project()[what]();
    this.host.say(what === "undo" ? "Undone" : "Done again");
  }

  refresh() {
    const project = this.host.project();
    this.undo.disabled = project.past.length === 0;
    this.redo.disabled = project.future.length === 0;
  }
}

// A bare cabinet: the parts that have to be there, as the engine's tables begin them.
function newTree() {
  const tree = { ...partOf("project").fresh };
  for (const part of texts.parts) {
    if (part.presence === "required" && part.path !== "" && !part.path.includes(".")) tree[part.path] = part.fresh;
  }
  return tree;
}

class StandingLine {
  constructor(toAnswer) {
    this.words = make("span", { class: "words" });
    this.element = make("div", { class: "standing", role: "group", "aria-label": "The answer in short" }, this.words,
      make("button", { type: "button", class: "link", click: toAnswer }, "to the answer"));
  }

  update(assessment) {
    const { report, governing, faults } = assessment;
    if (report === null) {
      fill(this.words, make("b", {}, assessment.broken ? "No answer" : sentenceCase(faultsCount(faults))));
      return;
    }
    if (report.unknown) {
      const { tried } = report.unknown;
      fill(this.words, make("b", {}, "Not known"), tried ? [": holds in ", shown(tried.holds, NUMBER), " of ", shown(tried.tried, NUMBER), " ways tried"] : ": being tried");
      return;
    }
    const known = governing && governing.utilisation !== null && governing.utilisation !== undefined;
    fill(this.words, make("b", {}, VERDICT_WORDS[report.verdict]),
      known && [" ", make("span", { class: "number" }, shown(governing.utilisation, UTILISATION, { rounding: "up" }))],
      governing && [" ", make("span", { class: "what" }, checkTitle(governing.id))]);
  }
}
