// The custom element: one worksheet in a guide's chapter, on another site, or the whole check.

// The one that a first visit shows; all others are described in the later half.
const LANDING_KIND = { title: "A live cabinet", view: "all", link: true };

const sharedSheets = [];

function worksheetSheets() {
  const styles = laterPart.isHere ? [worksheetStyle, late.laterStyle] : [worksheetStyle];
  for (const style of styles.slice(sharedSheets.length)) {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(style);
    sharedSheets.push(sheet);
  }
  return [...sharedSheets];
}

// A part of a worksheet that few projects need: where the later half is away, it is made, and fetched, only when there is
// something for it to say.
function latePart(isWanted, made) {
  return laterPart.isHere ? made() : new LatePart(isWanted, made);
}

class LatePart {
  constructor(isWanted, made) {
    Object.assign(this, { isWanted, made, part: null });
    this.element = make("div", { hidden: true });
  }

  update(assessment, tree) {
    if (this.part === null) {
      if (!this.isWanted(assessment)) return;
      this.part = this.made();
      this.element.replaceWith(this.part.element);
    }
    this.part.update(assessment, tree);
  }

  leave() {
    if (this.part !== null && this.part.leave) this.part.leave();
  }
}

function isOpen({ report }) {
  return report !== null && Boolean(report.unknown);
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
      reportsChanged.add(() => this.update()),
      laterPart.changed.add(() => this.update()),
    ];
    if (this.kind === "check") this.listenToPrinter();
    // The page of questions is its sheet, whichever way it is printed.
    if (this.kind === "ask-the-owner") this.stops.push(this.ownSheet.listen());
  }

  // The sheet is made when the page is printed, and weighs on nothing at other times.
  listenToPrinter() {
    const before = () => late.printCheck(this);
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
    // What there is to say of it stands at the top.
    if (this.kind === "check") this.sheet.scrollIntoView({ block: "start" });
    return this.say("Back to the example");
  }

  say(words) {
    this.spoken.textContent = words;
  }

  build() {
    const kind = this.kind === "landing" ? LANDING_KIND : late.WORKSHEET_KINDS[this.kind] || late.WORKSHEET_KINDS.check;
    const seat = { project: () => this.project(), faults: () => this.assessment.faults, say: (words) => this.say(words) };
    this.spoken = make("p", { class: "unseen", role: "status", "aria-live": "polite" });
    this.message = make("div", { class: "message", hidden: true });
    this.parts = [];
    const sheet = this.kind === "check" ? late.wholeCheck(this, seat) : this.fewFields(seat, kind);
    this.sheet = make("div", { class: "sheet " + this.kind + (readersCabinet.follows ? "" : " guest") }, this.message, sheet, this.spoken);
    this.sheet.addEventListener("keydown", (event) => this.key(event));
    // Only now does what was written here for readers without scripts give way.
    const root = this.attachShadow({ mode: "open" });
    root.append(this.sheet);
    this.dress();
  }

  with(part) {
    this.parts.push(part);
    return part.element;
  }

  fewFields(seat, kind) {
    const { title, fields = kind.fields, drawing = kind.view, answer = kind.topics || (kind.link ? null : ["bolted", "governs"]) } = this.config;
    this.answer = new Answer(() => this.project(), { only: answer });
    this.form = fields ? new late.FewFields(seat, fields) : null;
    this.whose = make("span", { class: "whose" });
    const reset = make("button", { type: "button", class: "plain", "data-key": "reset", click: () => (this.hallSheet ? this.hallSheet.begin(this.config) : this.reset()) }, "Reset");
    const views = drawing === "all" ? ["plan", "elevation", "rose"] : [].concat(drawing || []);
    this.results = make("div", { class: kind.link ? "results" : "results few-results" },
      (views.length > 0 || kind.tables || kind.checks || kind.standIn) && this.with(this.standIn()),
      views.length > 0 && this.with(new Drawings(views, kind.drawn)),
      (kind.tables || []).map((table) => this.with(table())),
      kind.checks && this.with(new late.CheckList((check) => kind.checks.test(check.id), null)),
      kind.studies && this.with(new late.OpenStudies(kind.studies, () => this.project())),
      kind.asks && this.with(new late.OwnerQuestions()),
      kind.sheet && this.with(this.ownSheet = new late.OwnSheet(this, kind.sheet)),
      kind.hall && this.with(this.hallSheet = new late.HallSheet(this, this.config)));
    const notKnown = this.with(this.notKnown());
    const onward = kind.link && (this.config.check || wholeCheckAddress());
    return [
      make("div", { class: "worksheet-head" }, make("h2", {}, title || kind.title), this.whose, reset, !document.getElementById("switches") && unitSwitch()),
      kind.link ? [this.answer.element, onward && make("p", { class: "next" }, make("a", { href: onward, click: (event) => this.takeAlong(event) }, "Open this cabinet in the whole check"),
        readersCabinet.follows && [["new", "Begin with a bare cabinet of your own"], readersCabinet.project === null && recalled("localStorage", "last") !== null && ["last", "Go on with your last cabinet"]].filter(Boolean).map(([what, words]) => (
          make("a", { href: onward, "data-key": "begin " + what, click: (event) => {
            event.preventDefault();
            const link = event.currentTarget;
            onceWhole(() => late.openExample(what, link));
          } }, words)))), notKnown, this.results, this.form && this.form.element]
        : [this.answer.element, this.form && this.form.element, notKnown, this.results],
    ];
  }

  // One of the ways that were tried can be put into the project, to see it worked out; undo brings the ranges back.
  notKnown() {
    return latePart(isOpen, () => new late.NotKnown((inputs, values) => {
      const project = this.project();
      project.change(inputs.map(({ path }, place) => ({ path, value: late.fileValue(values[place], path, project.tree) })));
      project.rest();
      this.say("These values stand in the project now; undo brings back what they may be");
    }));
  }

  standIn() {
    return latePart(isOpen, () => new late.StandIn());
  }

  // The style of what the later half makes comes with it.
  dress() {
    const sheets = worksheetSheets();
    if (this.shadowRoot.adoptedStyleSheets.length < sheets.length) this.shadowRoot.adoptedStyleSheets = sheets;
  }

  update() {
    if (!this.started) return;
    if (this.closest("[hidden]")) {
      this.stale = true;
      return;
    }
    this.stale = false;
    orLater(() => {
      this.dress();
      this.tell();
    }, () => this.wait());
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
    const list = report === null && late.faultsList(faults, { tree: project.tree, broken,
      show: (path) => this.showFault(path),
      remove: this.config.apart ? null : (path) => project.change([{ path, value: undefined }]) });
    this.answer.update(this.assessment, list);
    for (const part of this.parts) part.update(this.assessment, project.tree);
    if (this.form) this.form.refresh();
    if (this.toolbar) this.toolbar.refresh();
    const whose = this.hallSheet ? "" : this.config.apart ? "An example of its own" : readersCabinet.project ? "Your cabinet" : "An example, until you change it";
    this.whose.textContent = (this.kind === "check" && project.tree.title ? project.tree.title + " · " : "") + whose;
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
        message.button && [make("button", { type: "button", class: "plain", "data-key": "message", click: message.button[1] }, message.button[0]), " "],
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
  const demo = texts.demos.find((one) => one.file === config.demo) || late.fullDemo();
  return demo ? treeOf(demo.text) : late.newTree();
}
