// The custom element: one worksheet in a guide's chapter, on another site, or the whole check.

const WORKSHEET_KINDS = {
  landing: { title: "A live cabinet", view: "all", link: true },
  check: { view: "all" },
  "load-out": { title: "What stands there", view: "elevation", fields: ["cabinet.frame.mass_kg", "cabinet.frame.centre_mm", "contents[*].mass_kg"], tables: [StatesTable], topics: [] },
  demand: { title: "How hard it is shaken", view: "rose", fields: ["site.*"], tables: [CasesTable] },
  rules: { title: "Every rule side by side", fields: ["site.*"], topics: [], studies: ["side-by-side", "floor-level"] },
  "shake-table": { title: "What a test must show", fields: ["shake_table.*"], topics: [], studies: ["required-spectra", "test-rig"] },
  "base-reactions": { title: "What feet and anchors feel", view: "plan", fields: ["cabinet.frame.centre_mm", "cabinet.feet[*].stiffness_n_per_mm", "cabinet.anchors[*].stiffness_n_per_mm"], checks: /^base\./ },
  "standing-free": { title: "Whether it stays put by itself", view: "elevation", fields: ["cabinet.frame.mass_kg", "cabinet.frame.centre_mm", "slab.friction", "motion.slope", "motion.push_height_mm"], checks: /^free\./, drawn: /^free\.tipping$/, topics: ["free"], studies: ["standing-free"] },
  rocking: { title: "Whether it rocks, and how far", fields: ["motion.pulse", "motion.pulse_g", "motion.pulse_s", "motion.impulse", "motion.record_unit", "motion.record_step_s", "motion.record_factor", "motion.friction_low", "motion.strongest", "motion.damping"], topics: [], studies: ["rocking", "fragility", "response-spectrum"] },
  anchors: { title: "Whether the anchors hold", view: "plan", fields: ["anchorage.rule", "anchorage.bolt", "anchorage.steel", "anchorage.embedment_mm", "slab.strength_mpa", "slab.thickness_mm", "slab.cracked", "slab.edges_mm.*"], checks: /^anchor\./, studies: ["anchor-modes", "anchor-section", "what-would-hold"] },
  "setting-out": { title: "The setting-out sheet", view: [], fields: ["cabinet.anchors[*].at_mm", "cabinet.anchors[*].as_built_mm", "drilling.*"], topics: ["bolted"], studies: ["setting-out", "as-built"], sheet: "setting-out" },
  feet: { title: "Whether the floor bears the feet", view: "plan", fields: ["cabinet.feet[*].size_mm", "slab.strength_mpa", "slab.thickness_mm"], checks: /^foot\./, drawn: /^foot\./ },
  slab: { title: "Whether the slab carries it", view: "plan", fields: ["floor.subgrade_n_per_mm3", "floor.reinforcement", "slab.thickness_mm", "slab.strength_mpa", "cabinet.feet[*].size_mm", "slab.edges_mm.*"], checks: /^slab\./, drawn: /^slab\./ },
  "ways-of-standing": { title: "Casters, levelling feet or wide bases", fields: ["cabinet.frame.mass_kg"], topics: [], studies: ["ways-of-standing"] },
  "pressure-map": { title: "How hard each foot presses", fields: ["cabinet.feet[*].size_mm"], topics: [], studies: ["pressure-map"] },
  "bolt-stiffness": { title: "What soft feet and stiff bolts do", fields: ["cabinet.feet[*].pad_stiffness_n_per_mm", "cabinet.anchors[*].clip_stiffness_n_per_mm"], topics: [], studies: ["stiffness"] },
  "uneven-floor": { title: "What an uneven floor does", fields: ["cabinet.feet[*].gap_mm"], topics: [], studies: ["uneven-floor"] },
  "row-of-cabinets": { title: "A row of cabinets", fields: ["floor.pitch_mm", "floor.aisle_load_mpa"], topics: [], studies: ["row-of-cabinets"] },
  "ask-the-owner": { title: "Questions to send", topics: [], asks: true, sheet: "ask-the-owner" },
  row: { title: "Side by side", fields: ["row.cabinets", "row.pitch_mm", "row.tied", "row.tie_height_mm"], topics: [], studies: ["cabinets-in-a-row"] },
  frame: { title: "How stiff the frame is", fields: ["structure.*"], checks: /^frame\./, topics: ["bolted"], studies: ["sway"] },
  "not-known": { title: "What you do not know", fields: ["anchorage.embedment_mm", "slab.strength_mpa", "slab.cracked", "cabinet.frame.mass_kg"], topics: ["bolted"], studies: ["not-known"] },
  "what-matters": { title: "What matters most", topics: ["bolted"], studies: ["what-matters"] },
  "move-down": { title: "What to move down", fields: ["contents[*].mass_kg"], topics: ["bolted", "free"], studies: ["what-to-move-down"] },
  moving: { title: "Whether it comes to its place", fields: ["moving.*"], checks: /^move\./, topics: [] },
  limits: { title: "How far each input can go", fields: ["cabinet.frame.mass_kg", "contents[*].mass_kg", "site.*"], topics: ["bolted"], studies: ["how-far"], standIn: true },
  map: { title: "Two inputs against each other", fields: ["contents[*].mass_kg", "slab.edges_mm.*", "anchorage.embedment_mm"], topics: ["bolted"], studies: ["limit-map"] },
  lifting: { title: "Whether it hangs safely", fields: ["lifting.*", "cabinet.lifting_points[*].at_mm"], checks: /^lift\./, topics: [], studies: ["hook"] },
  "zone-statement": { title: "The zone statement", fields: ["cabinet.frame.mass_kg", "contents[*].mass_kg", "anchorage.bolt", "anchorage.steel", "anchorage.embedment_mm", "anchorage.overstrength", "slab.strength_mpa", "slab.thickness_mm", "slab.cracked", "slab.edges_mm.*"], topics: ["bolted", "free"], studies: ["zone-statement"], sheet: "zone-statement" },
  hall: { title: "A hall full", topics: [], hall: true },
};

let sharedStyle = null;

function worksheetSheet() {
  if (sharedStyle === null) {
    sharedStyle = new CSSStyleSheet();
    sharedStyle.replaceSync(worksheetStyle);
  }
  return sharedStyle;
}

class SteadfootWorksheet extends HTMLElement {
  connectedCallback() {
    if (this.started) return this.listen();
    this.stops = [laterPart.changed.add(() => this.wake())];
    readersCabinet.ready.then(() => this.wake());
    return undefined;
  }

  disconnectedCallback() {
    for (const stop of this.stops || []) stop();
    this.stops = [];
    for (const part of this.parts || []) if (part.leave) part.leave();
  }

  // A page that shows one chapter at a time wakes a worksheet only when its chapter is shown.
  wake() {
    if (this.started || !this.isConnected || this.closest("[hidden]")) return;
    this.kind = this.getAttribute("kind") || this.getAttribute("part") || "check";
    this.config = parsedConfig(this.getAttribute("config"));
    this.assessment = NOT_ASSESSED;
    this.querySelector(":scope > .later-note")?.remove();
    // What was written here for readers without scripts stands until the worksheet can be made.
    orLater(() => {
      this.takeExample();
      this.build();
      this.started = true;
    }, () => this.prepend(laterNote()));
    if (!this.started) return;
    for (const stop of this.stops) stop();
    this.listen();
    this.update();
  }

  listen() {
    this.stops = [
      readersCabinet.changed.add(() => this.update()),
      unitSystem.changed.add(() => this.update()),
      openDesk.changed.add(() => this.update()),
      laterPart.changed.add(() => this.update()),
    ];
    if (this.kind === "check") this.listenToPrinter();
    // The page of questions is its sheet, whichever way it is printed.
    if (this.kind === "ask-the-owner") this.stops.push(this.ownSheet.listen());
  }

  // The sheet is made when the page is printed, and weighs on nothing at other times.
  listenToPrinter() {
    const before = () => this.print();
    const after = () => fill(this.paper.element);
    addEventListener("beforeprint", before);
    addEventListener("afterprint", after);
    this.stops.push(() => removeEventListener("beforeprint", before), () => removeEventListener("afterprint", after));
  }

  // The example that stands here until the reader has a cabinet; one that is `apart` stays the reader's aside.
  takeExample() {
    this.example = exampleTree(this.config);
    this.own = new Project(this.example);
    this.own.changed.add(() => {
      if (this.config.apart) this.update();
      else readersCabinet.adopt(this.own);
    });
  }

  project() {
    return this.config.apart ? this.own : readersCabinet.project || this.own;
  }

  reset() {
    if (this.config.apart) return this.own.begin(this.example);
    readersCabinet.forget();
    return this.say("Back to the example");
  }

  say(words) {
    this.spoken.textContent = words;
  }

  build() {
    const kind = WORKSHEET_KINDS[this.kind] || WORKSHEET_KINDS.check;
    const seat = { project: () => this.project(), faults: () => this.assessment.faults, say: (words) => this.say(words) };
    this.spoken = make("p", { class: "unseen", role: "status", "aria-live": "polite" });
    this.message = make("div", { class: "message", hidden: true });
    this.parts = [];
    const sheet = this.kind === "check" ? this.wholeCheck(seat) : this.fewFields(seat, kind);
    this.sheet = make("div", { class: "sheet " + this.kind + (readersCabinet.follows ? "" : " guest") }, this.message, sheet, this.spoken);
    this.sheet.addEventListener("keydown", (event) => this.key(event));
    // Only now does what was written here for readers without scripts give way.
    const root = this.attachShadow({ mode: "open" });
    root.adoptedStyleSheets = [worksheetSheet()];
    root.append(this.sheet);
  }

  with(part) {
    this.parts.push(part);
    return part.element;
  }

  wholeCheck(seat) {
    this.answer = new Answer(() => this.project());
    this.form = new Form(seat);
    this.limits = new Limits();
    this.checkList = new CheckList();
    this.comparison = new Comparison((check, address) => this.checkList.showStep(check, address));
    this.toolbar = new Toolbar({ project: () => this.project(), reset: () => this.reset(), say: (words) => this.say(words) });
    this.paper = new CalculationSheet();
    this.results = make("div", { class: "results" },
      this.with(new StandIn()), this.with(new Drawings()), this.with(this.checkList), this.with(this.limits), this.with(new MoreQuestions(() => this.project())), this.with(this.comparison),
      make("section", { class: "what-was-assessed", "aria-label": "What was assessed" }, make("h2", {}, "What was assessed"), this.with(new StatesTable()), this.with(new CasesTable()),
        this.with({ element: (this.absent = make("div")), update: ({ report }) => report && fill(this.absent, absentLines(report)) })));
    return [
      this.answer.element, this.with(this.notKnown()), this.results,
      make("div", { class: "inputs" }, this.with(new StandingLine(() => this.toAnswer())), this.toolbar.element, this.form.element),
      this.paper.element,
    ];
  }

  fewFields(seat, kind) {
    const { title, fields = kind.fields, drawing = kind.view, answer = kind.topics || (kind.link ? null : ["bolted", "governs"]) } = this.config;
    this.answer = new Answer(() => this.project(), { only: answer });
    this.form = fields ? new FewFields(seat, fields) : null;
    this.whose = make("span", { class: "whose" });
    const reset = make("button", { type: "button", class: "plain", "data-key": "reset", click: () => (this.hallSheet ? this.hallSheet.begin(this.config) : this.reset()) }, "Reset");
    const views = drawing === "all" ? ["plan", "elevation", "rose"] : [].concat(drawing || []);
    this.results = make("div", { class: kind.link ? "results" : "results few-results" },
      (views.length > 0 || kind.tables || kind.checks || kind.standIn) && this.with(new StandIn()),
      views.length > 0 && this.with(new Drawings(views, kind.drawn)),
      (kind.tables || []).map((Table) => this.with(new Table())),
      kind.checks && this.with(new CheckList((check) => kind.checks.test(check.id), null)),
      kind.studies && this.with(new OpenStudies(kind.studies, () => this.project())),
      kind.asks && this.with(new OwnerQuestions()),
      kind.sheet && this.with(this.ownSheet = new OwnSheet(this, kind.sheet)),
      kind.hall && this.with(this.hallSheet = new HallSheet(this, this.config)));
    const notKnown = this.with(this.notKnown());
    return [
      make("div", { class: "worksheet-head" }, make("h2", {}, title || kind.title), this.whose, reset, !document.getElementById("switches") && unitSwitch()),
      kind.link ? [this.answer.element, notKnown, this.results, this.form && this.form.element] : [this.form && this.form.element, this.answer.element, notKnown, this.results],
      kind.link && this.config.check && make("p", { class: "onward-check" }, make("a", { href: this.config.check, click: (event) => this.takeAlong(event) }, "Open this cabinet in the whole check")),
    ];
  }

  // One of the ways that were tried can be put into the project, to see it worked out; undo brings the ranges back.
  notKnown() {
    return new NotKnown((inputs, values) => {
      const project = this.project();
      project.change(inputs.map(({ path }, place) => ({ path, value: fileValue(values[place], path, project.tree) })));
      project.rest();
      this.say("These values stand in the project now; undo brings back what they may be");
    });
  }

  update() {
    if (!this.started) return;
    if (this.closest("[hidden]")) {
      this.stale = true;
      return;
    }
    this.stale = false;
    orLater(() => this.tell(), () => this.wait());
  }

  // Nothing of an older answer is to be seen as long as the new one has to wait.
  wait() {
    this.assessment = NOT_ASSESSED;
    this.sheet.classList.add("waiting", "untold");
    this.answer.update(this.assessment, laterNote());
    this.tellMessage();
    this.mirror();
  }

  tell() {
    // Where the reader has no cabinet any more, the example stands here again as it was.
    if (!this.config.apart && readersCabinet.project === null && this.own.tree !== this.example) this.takeExample();
    const project = this.project();
    this.assessment = assessed(project.text, unitSystem.now);
    const { report, faults, broken } = this.assessment;
    // The place of the results is kept while somebody types, so that the field does not move under the hand.
    const editing = this.told && this.shadowRoot.activeElement !== null && this.sheet.querySelector(".form")?.contains(this.shadowRoot.activeElement);
    this.told = this.told || report !== null;
    this.sheet.classList.toggle("waiting", report === null);
    this.sheet.classList.toggle("untold", report === null && !editing);
    const list = report === null && faultsList(faults, { tree: project.tree, broken,
      show: (path) => this.showFault(path),
      remove: this.config.apart ? null : (path) => project.change([{ path, value: undefined }]) });
    this.answer.update(this.assessment, list);
    for (const part of this.parts) part.update(this.assessment, project.tree);
    if (this.form) this.form.refresh();
    if (this.toolbar) this.toolbar.refresh();
    if (this.whose) this.whose.textContent = this.hallSheet ? "" : this.config.apart ? "An example of its own" : readersCabinet.project ? "Your cabinet" : "An example, until you change it";
    this.tellMessage();
    this.mirror();
  }

  // Key results on the host itself, where scripts of other sites, tests and dumps of the page find them.
  mirror() {
    const { report, governing } = this.assessment;
    const data = {
      answer: report ? report.verdict : this.assessment.isWaiting ? "waiting" : "faults", faults: String(this.assessment.faults.length), units: unitSystem.now,
      fingerprint: report && report.fingerprint, utilisation: governing && governing.utilisation, governs: governing && governing.id,
      sentence: report && answerText(report.answer),
      tried: report && report.unknown && report.unknown.tried ? String(report.unknown.tried.tried) : null,
    };
    for (const [name, value] of Object.entries(data)) {
      if (value === null || value === undefined) delete this.dataset[name];
      else this.dataset[name] = value;
    }
  }

  tellMessage() {
    const message = this.config.apart ? null : readersCabinet.message;
    const tooLong = readersCabinet.tooLong && this.kind === "check";
    this.message.hidden = message === null && !tooLong;
    if (message === this.messageTold && tooLong === this.tooLongTold) return;
    this.messageTold = message;
    this.tooLongTold = tooLong;
    fill(this.message,
      message && make("div", { class: "told", role: message.kind === "faults" ? "alert" : "status", "data-message": message.kind },
        message.lines.map((line) => make("p", {}, line)),
        make("button", { type: "button", class: "plain", click: () => readersCabinet.say(null) }, "Dismiss")),
      tooLong && make("p", { class: "note", "data-message": "too-long" }, "This project is too large for the address of the page; save a file instead."));
  }

  showFault(path) {
    if (this.form && this.form.show(path)) return;
    this.say("This field stands in the whole check.");
  }

  // An example that is taken along becomes the reader's, or the other page would show its own.
  async takeAlong(event) {
    if (readersCabinet.project !== null || !readersCabinet.follows) return;
    event.preventDefault();
    const link = event.currentTarget;
    readersCabinet.adopt(this.own);
    await readersCabinet.carry();
    location.href = link.href;
  }

  toAnswer() {
    this.answer.told.scrollIntoView({ block: "start" });
    this.answer.told.focus({ preventScroll: true });
  }

  // Undo from anywhere but a text field, which has its own.
  key(event) {
    if (!(event.ctrlKey || event.metaKey) || event.altKey || event.key.toLowerCase() !== "z") return;
    const [target] = event.composedPath();
    if (target.localName === "input" && target.type === "text") return;
    event.preventDefault();
    this.project()[event.shiftKey ? "redo" : "undo"]();
  }

  print() {
    if (this.closest("[hidden]") || !this.isConnected) return;
    this.limits.complete();
    completeOpen(this.assessment);
    this.paper.make(this.assessment, this.project().tree, this.limits.known, this.comparison.onPaper());
  }
}

function parsedConfig(text) {
  try {
    const config = JSON.parse(text || "{}");
    return config !== null && typeof config === "object" ? config : {};
  } catch {
    return {};
  }
}

// What a worksheet begins with: a project of its own, a demo by its file's name, or the full cabinet.
function exampleTree(config) {
  if (config.project && typeof config.project === "object") return config.project;
  const demo = texts.demos.find((one) => one.file === config.demo) || texts.demos.find((one) => /full/.test(one.file)) || texts.demos[0];
  return demo ? treeOf(demo.text) : newTree();
}
