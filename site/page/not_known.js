// What is not known: tried in a worker after the answer, told beneath it, and said beside everything that stands for
// one way only.

// One worker for the page. Of several projects only the last is tried; its report then takes the place of the first one.
const openDesk = {
  progressed: new Listeners(),
  worker: null,
  asked: null,

  ask(assessment) {
    if (!isUntried(assessment) || this.asked === assessment) return;
    this.asked = assessment;
    if (this.worker === null) this.worker = this.open();
    this.worker.postMessage(assessment.text);
  },

  hear(said) {
    const { asked } = this;
    if (asked === null || said.text !== asked.text) return;
    if (said.progress) {
      this.progressed.tell(asked, said.progress);
      return;
    }
    this.asked = null;
    if (!said.report) return;
    asked.report = said.report;
    reportsChanged.tell();
  },

  // Where a page may have no worker, the same is tried here, between two breaths.
  open() {
    const here = { postMessage: (text) => setTimeout(() => this.asked && this.asked.text === text && this.hear({ text, report: triedReport(text) })) };
    try {
      const worker = engineWorker((engine) => {
        let now = null;
        const goOn = (text, work) => {
          if (text !== now) {
            work.free();
            return;
          }
          const until = Date.now() + 60;
          let more = true;
          while (more && Date.now() < until) more = work.advance();
          if (more) {
            self.postMessage({ text, progress: [...work.progress()] });
            setTimeout(() => goOn(text, work));
            return;
          }
          self.postMessage({ text, report: work.report() });
          now = null;
          work.free();
        };
        self.onmessage = ({ data: text }) => {
          now = text;
          try {
            const work = engine.begin_open(text);
            if (work) goOn(text, work);
            else self.postMessage({ text, report: null });
          } catch (error) {
            self.postMessage({ text, report: null, error: String(error) });
          }
        };
      });
      worker.onmessage = ({ data }) => this.hear(data);
      worker.onerror = () => {
        worker.terminate();
        this.worker = here;
        if (this.asked !== null) here.postMessage(this.asked.text);
      };
      return worker;
    } catch {
      return here;
    }
  },
};

function isUntried({ report }) {
  return report !== null && Boolean(report.unknown) && !report.unknown.tried;
}

function triedReport(text) {
  return engineSays((engine) => {
    const work = engine.begin_open(text);
    while (work.advance());
    const report = work.report();
    work.free();
    return report;
  });
}

// At once, for paper.
function completeOpen(assessment) {
  if (isUntried(assessment)) assessment.report = triedReport(assessment.text);
}

// A number with its unit, or a word as its field calls it.
function openValueText(input, value, tree) {
  if (typeof value === "number") return shown(value, input.kind);
  const field = fieldAt(input.path, tree);
  if (field && field.shape === "flag") return value === "true" ? "yes" : "no";
  return field ? labelOfWord(field, value) : value;
}

function openRangeText(input, [from, to], tree) {
  const ends = [from, to].map((value) => openValueText(input, value, tree));
  return from === to ? ends[0] : ends.join(" to ");
}

function mayBeText(input, tree) {
  if (typeof input.may_be[0] === "number") return openRangeText(input, input.may_be, tree);
  return input.may_be.map((value) => openValueText(input, value, tree)).join(" or ");
}

// "Embedment 90 mm, Concrete may crack yes": the values of one way.
function wayText(inputs, values, tree) {
  return inputs.map((input, place) => placeText(input.path, tree) + " " + openValueText(input, values[place], tree)).join("; ");
}

// Beside whatever stands for one way only.
function standInNote(report, tree) {
  const { unknown } = report;
  if (!unknown) return null;
  return make("p", { class: "note", "data-stand-in": true }, "This stands for one way only: ",
    textWithSymbols(wayText(unknown.inputs, unknown.inputs.map((input) => input.stand_in), tree)), ".");
}

class StandIn {
  constructor() {
    this.element = make("div", { class: "stand-in" });
  }

  update({ report }, tree) {
    fill(this.element, report && standInNote(report, tree));
  }
}

// What may be, what became of it, and which one measurement would settle it.
class NotKnown {
  // `change` puts values into the project, each at its path.
  constructor(change) {
    this.change = change;
    this.element = make("section", { class: "not-known", "aria-label": "What is not known", hidden: true });
    openDesk.progressed.add((assessment, [done, of]) => {
      if (assessment !== this.assessment || !this.bar) return;
      this.bar.max = of;
      this.bar.value = done;
    });
  }

  update(assessment, tree) {
    this.assessment = assessment;
    const unknown = assessment.report && assessment.report.unknown;
    this.element.hidden = !unknown;
    this.bar = null;
    if (!unknown) return fill(this.element);
    openDesk.ask(assessment);
    return keepingFocus(this.element, () => fill(this.element,
      make("h3", {}, "Not known"),
      make("ul", { class: "open-inputs" }, unknown.inputs.map((input) => make("li", { "data-open": input.path },
        textWithSymbols(placeText(input.path, tree)), ": ", mayBeText(input, tree)))),
      unknown.tried ? triedLines(unknown, tree, this.change)
        : make("p", { class: "note" }, (this.bar = make("progress", { max: 1, value: 0, "aria-label": "How much of what may be was tried" })), " What they may be is being tried …")));
  }
}

function triedLines({ inputs, tried }, tree, change) {
  return [
    tried.nearest && make("p", { "data-nearest": true }, "Nearest way tried in which it does not hold: ", textWithSymbols(wayText(inputs, tried.nearest.values, tree)), ". ",
      pointText(tried.nearest), " ",
      change && make("button", { type: "button", class: "plain", "data-key": "take nearest", click: () => change(inputs, tried.nearest.values) }, "Put these values in")),
    tried.closest && make("p", { "data-closest": true }, "Holds with the least to spare: ", textWithSymbols(wayText(inputs, tried.closest.values, tree)), ". ", pointText(tried.closest)),
    tried.settles.length > 0 && [make("p", {}, "Which one measurement would settle it, the one that decides most first:"),
      make("ol", { class: "settles" }, tried.settles.map(({ input, decides, parts }) => make("li", { "data-settles": inputs[input].path, "data-decides": decides },
        textWithSymbols(placeText(inputs[input].path, tree)), ": ", parts.map((part, place) => [place > 0 && "; ",
          openRangeText(inputs[input], [part.from, part.to], tree), " holds in ", shown(part.holds, NUMBER), " of ", shown(part.tried, NUMBER)]), "."))) ],
    tried.settles.length === 0 && make("p", {}, "Everything that was tried comes to the same answer: no measurement of these would change it."),
  ];
}

function pointText({ governs, utilisation, fault }) {
  if (fault) return "It cannot be built: " + fault + ".";
  if (!governs) return "";
  return checkTitle(governs) + (utilisation === null || utilisation === undefined ? "" : ", " + shown(utilisation, UTILISATION, { rounding: "up" })) + ".";
}

// A value of the file for one of a way: flags are words only when they are told.
function fileValue(value, path, tree) {
  const field = fieldAt(path, tree);
  return field && field.shape === "flag" ? value === "true" : value;
}

function isSet(value) {
  return value !== null && typeof value === "object" && Array.isArray(value.one_of);
}

function isOpenValue(value) {
  return isRange(value) || isSet(value);
}
