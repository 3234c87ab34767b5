// The reader's cabinet: one for the whole guide. Until a reader changes something there is none, and each worksheet
// shows its own example; from then on all of them show the reader's, and the address carries it to the next page.

const ADDRESS_DELAY_MS = 300;

const readersCabinet = {
  project: null,
  changed: new Listeners(),
  message: null,
  tooLong: false,
  ready: null,
  place: "",
  isAnother: true,

  // Takes over a tree as the reader's own. `message` says what there is to say about where it came from.
  take(tree, message = null) {
    this.putAside();
    this.message = message;
    if (this.project === null) return this.adopt(new Project(tree));
    this.project.become(tree);
    return this.project.rest();
  },

  // An example that a reader has changed is the reader's from then on, with all that can be undone.
  adopt(project) {
    if (this.message !== null && this.message.kind === "aside") this.message = null;
    if (this.project !== project) {
      this.project = project;
      project.changed.add(() => this.project === project && this.follow());
    }
    this.follow();
  },

  // Back to the examples; what the reader had can be brought back.
  forget() {
    this.putAside();
    const { project } = this;
    this.project = null;
    this.message = project && { kind: "aside", lines: ["The example stands here again. Your cabinet was put aside."], button: ["Bring it back", () => this.adopt(project)] };
    this.tooLong = false;
    this.kept = null;
    remember("sessionStorage", "project", null);
    this.carry();
    this.changed.tell();
  },

  say(message) {
    this.message = message;
    this.changed.tell();
  },

  follow() {
    this.carryLater();
    this.changed.tell();
  },

  // Another cabinet comes: what was kept last for another visit becomes what was kept before it.
  putAside() {
    this.keep();
    this.isAnother = true;
  },

  // Into this window's memory, and for another visit.
  keep() {
    if (this.project === null || this.kept === this.project.text) return;
    this.kept = this.project.text;
    const last = recalled("localStorage", "last");
    if (this.isAnother && last !== null && last !== this.kept) remember("localStorage", "before", last);
    this.isAnother = false;
    remember("sessionStorage", "project", this.kept);
    remember("localStorage", "last", this.kept);
  },

  // Writes the project into the address and into the links to the other pages.
  async carry() {
    const text = this.project === null ? null : this.project.text;
    let data = null;
    if (text !== null) {
      data = await packed(text);
      if (this.project === null || this.project.text !== text) return;
    }
    const tooLong = data !== null && data.length > ADDRESS_BYTES_MAX;
    if (tooLong) data = null;
    this.data = data;
    this.writeAddress();
    if (tooLong !== this.tooLong) {
      this.tooLong = tooLong;
      this.changed.tell();
    }
  },

  writeAddress() {
    if (!this.follows) return;
    const { data = null, place } = this;
    const address = addressOf({ data, units: unitSystem.now, place });
    if (address !== location.hash) history.replaceState(history.state, "", address || location.pathname + location.search);
    const roots = [...document.querySelectorAll("steadfoot-worksheet")].map((worksheet) => worksheet.shadowRoot).filter(Boolean);
    for (const root of [document, ...roots]) for (const link of root.querySelectorAll("a[href]")) carryOn(link, data);
  },

  // What the address or this window's memory brings along. The address of another site's page is not ours to read.
  async arrive() {
    const { data, units, place } = addressParts(this.follows ? location.hash : "");
    this.place = place;
    if (units !== null) unitSystem.choose(units);
    if (data !== null) {
      try {
        const text = await unpacked(data);
        this.receive(text, "The address");
      } catch {
        this.say({ kind: "faults", lines: ["The address of this page should hold a cabinet, but what it holds cannot be read. It may have been cut short on its way. The example is shown instead."] });
      }
      return;
    }
    const kept = recalled("sessionStorage", "project");
    if (kept === null) return;
    try {
      this.take(treeOf(kept));
    } catch {
      remember("sessionStorage", "project", null);
    }
  },

  // A project file's text, from wherever it came. Faults of the text itself, which the form could not show, are told.
  receive(text, source) {
    let tree = null;
    try {
      tree = treeOf(text);
    } catch {
      // What is wrong with it is for the engine to say.
    }
    // The project is taken at once; what there is to say about it may have to wait for the rest of the engine.
    if (tree !== null) this.take(tree);
    onceWhole(() => this.tellOf(text, tree, source));
  },

  tellOf(text, tree, source) {
    const said = new Assessment(text, unitSystem.now);
    if (tree === null) {
      const lines = said.faults.length > 0 ? said.faults.map((fault) => fault.sentence) : ["It is not a project file."];
      return this.say({ kind: "faults", lines: [source + " holds no project that can be read:", ...lines] });
    }
    const again = new Assessment(JSON.stringify(tree), unitSystem.now);
    const lost = said.faults.filter((fault) => !again.faults.some((other) => other.path === fault.path && other.problem === fault.problem));
    const message = lost.length > 0 ? { kind: "faults", lines: [source + " has faults that are mended by saving it again:", ...lost.map((fault) => fault.sentence)] } : movedMessage(tree, again);
    if (message !== null) this.say(message);
    return undefined;
  },
};

readersCabinet.carryLater = whenQuiet(ADDRESS_DELAY_MS, () => {
  readersCabinet.keep();
  readersCabinet.carry();
});
addEventListener("pagehide", () => readersCabinet.keep());
unitSystem.changed.add(() => readersCabinet.writeAddress());

// A link to another page of the guide takes the cabinet along; where it leads does not change.
function carryOn(link, data) {
  const own = link.dataset.own || link.getAttribute("href");
  const found = /^([\w-]+\.html)(?:#(.*))?$/.exec(own);
  if (!found || document.body.dataset.shape !== "folder") return;
  link.dataset.own = own;
  link.setAttribute("href", found[1] + addressOf({ data, units: unitSystem.now, place: found[2] || "" }));
}

// Where this guide has the whole check.
function wholeCheckAddress() {
  const links = [...document.querySelectorAll("#pages a[href]")].map((link) => link.dataset.own || link.getAttribute("href"));
  return links.find((href) => /^(check\.html|#check$)/.test(href));
}

// A file that was written by another version of the engine may get another answer now; then it is said.
function movedMessage(tree, assessment) {
  const { written_by: version, last_answer: before } = tree;
  if (typeof version !== "string" || version === texts.engine) return null;
  const by = "This file was last written by version " + version + " of the engine; here it is version " + texts.engine + ".";
  const now = lastAnswer(assessment);
  if (typeof before !== "string" || now === null) {
    return { kind: "numbers-moved", lines: [by + " The file does not say what the answer was then, so compare the numbers with your printed sheet: a new version can make them move."] };
  }
  if (before === now) return { kind: "numbers-kept", lines: [by + " The answer is the same as then: " + now + "."] };
  return { kind: "numbers-moved", lines: ["New version made your numbers move. " + by + " Then the answer was: " + before + ". Now it is: " + now + "."] };
}

function lastAnswer(assessment) {
  const { report, governing } = assessment;
  // What is not known is tried later, and its answer is no single one.
  if (report === null || report.unknown) return null;
  const verdict = VERDICT_WORDS[report.verdict].toLowerCase();
  const known = governing && governing.utilisation !== null && governing.utilisation !== undefined;
  return known ? verdict + ", " + shown(governing.utilisation, UTILISATION, { rounding: "up" }) : verdict;
}
