// What has not come with the page's first scripts: the rest of the engine, of the text tables and of this code. Whoever comes upon
// something that is not there throws `LaterWanted`; then the rest is fetched, and all worksheets are made again with it.

class LaterWanted extends Error {
  constructor() {
    super("the later part is wanted");
    if (laterPart.state === "away") laterPart.bring();
  }
}

const laterPart = {
  // "away", "coming", "missing" or "here".
  state: "away",
  engine: null,
  code: null,
  half: null,
  changed: new Listeners(),
  waiting: [],

  get isHere() {
    return this.state === "here";
  },

  async bring() {
    this.state = "coming";
    // Whoever wanted it is still in the midst of something.
    await null;
    this.changed.tell();
    const given = await bringLater();
    if (given) {
      this.take(given);
      for (const work of this.waiting.splice(0)) work();
    } else {
      this.state = "missing";
      if (this.waiting.length > 0) readersCabinet.say({ kind: "later", lines: laterLines() });
    }
    this.changed.tell();
  },

  take({ engine, texts: more, code }) {
    this.state = "here";
    this.engine = engine;
    this.code = code;
    openedModules = null;
    dropEngine();
    addTexts(more);
  },
};

// The later half of this code. The builder puts both halves together: it finds what each uses of the other.
const late = new Proxy({}, {
  get(_, name) {
    if (!laterPart.isHere) throw new LaterWanted();
    if (laterPart.half === null) laterPart.half = laterPart.code(handedOver());
    return laterPart.half[name];
  },
});

// Does the work at once, or when the later part has come where it is wanted for that.
function onceWhole(work) {
  orLater(work, () => {
    laterPart.waiting.push(work);
    if (laterPart.state === "missing") laterPart.bring();
  });
}

function orLater(work, otherwise) {
  try {
    work();
  } catch (error) {
    if (!(error instanceof LaterWanted)) throw error;
    otherwise();
  }
}

function laterLines() {
  return ["This needs the rest of the engine, and it cannot be had.",
    "It stands in the file later.js beside this page: the network may be gone, the file was not copied along, or it is of another version. What you typed is kept."];
}

// What stands in place of an answer until the later part is here.
function laterNote() {
  const [lead, why] = laterLines();
  return make("div", { class: "later-note", role: "status", "data-later": laterPart.state },
    laterPart.state === "missing"
      ? [make("p", { class: "lead" }, lead), make("p", {}, why),
        make("button", { type: "button", class: "plain", "data-key": "later again", click: () => laterPart.bring() }, "Try again")]
      : make("p", { class: "lead" }, "The rest of the engine is on its way; the answer follows at once."));
}

if (laterGiven) laterPart.take(laterGiven);

// What tests and other sites may use.
Object.assign(globalThis.steadfoot, { openEngine, engineWorker, texts });
Object.defineProperties(globalThis.steadfoot, { EnginePool: { get: () => late.EnginePool }, later: { get: () => laterPart.state } });
