// How far it can go: asked after the answer, in a worker of its own, because it tries the whole check many times.

const LIMITS_DELAY_MS = 400;
const LIMIT_HEADS = ["What", "Holds up to", "Now", "What governs there"];
const OF_WORDS = { bolted: "Once bolted", free: "Before bolting" };
const WHAT_WORDS = { demand: "Strongest demand", load: "Largest load aboard", zone: "Highest zone" };
const ENDING_WORDS = {
  bracketed: "",
  holds_to_the_end: "holds as far as it was tried",
  never_holds: "holds nowhere in what was tried",
  not_monotone: "holds here, fails and holds again further on; this is where it first fails",
  cannot_be_said: "cannot be said, because a check that decides is not covered",
};

class Limits {
  constructor() {
    this.worker = null;
    this.busy = false;
    this.waiting = null;
    this.known = { text: null, limits: null };
    this.body = make("div", { class: "limits-body" });
    this.element = make("section", { class: "limits", "aria-labelledby": "limits-title" },
      make("h2", { id: "limits-title" }, "How far it can go"), this.body);
    this.askLater = whenQuiet(LIMITS_DELAY_MS, (text) => this.ask(text));
  }

  update(assessment) {
    this.assessment = assessment;
    if (assessment.report === null) return;
    this.render();
    if (this.known.text !== assessment.text) this.askLater(assessment.text);
  }

  ask(text) {
    if (this.assessment.text !== text) return;
    if (this.busy) {
      this.waiting = text;
      return;
    }
    this.busy = true;
    if (this.worker === null) this.worker = this.open();
    this.worker.postMessage(text);
  }

  // Where a page may have no worker, the same question is asked here, between two breaths.
  open() {
    const answer = (data) => {
      this.busy = false;
      this.known = data;
      this.render();
      const next = this.waiting;
      this.waiting = null;
      if (next !== null && next !== data.text) this.ask(next);
    };
    const here = { postMessage: (text) => setTimeout(() => {
      try {
        answer(this.worked(text));
      } catch (error) {
        answer({ text, limits: null });
        console.error(error);
      }
    }) };
    try {
      const worker = engineWorker((engine) => {
        self.onmessage = ({ data: text }) => {
          try {
            self.postMessage({ text, limits: engine.limits(text), strength: engine.turned(text, "strength", 1) });
          } catch (error) {
            self.postMessage({ text, limits: null, error: String(error) });
          }
        };
      });
      worker.onmessage = ({ data }) => answer(data);
      worker.onerror = () => {
        worker.terminate();
        this.worker = here;
        if (this.busy) here.postMessage(this.assessment.text);
      };
      return worker;
    } catch {
      return here;
    }
  }

  // Computed at once, for paper.
  complete() {
    const { text } = this.assessment;
    if (this.assessment.report === null || this.known.text === text) return;
    this.known = this.worked(text);
    this.render();
  }

  worked(text) {
    return engineSays((engine) => ({ text, limits: engine.limits(text), strength: engine.turned(text, "strength", 1) }));
  }

  render() {
    const { limits, text } = this.known;
    const current = text === this.assessment.text;
    this.element.classList.toggle("stale", !current);
    this.element.setAttribute("aria-busy", String(!current));
    if (limits === null) {
      fill(this.body, make("p", { class: "note" }, current ? "This could not be worked out." : "Being worked out …"));
      return;
    }
    fill(this.body, this.assessment.report && standInNote(this.assessment.report, JSON.parse(this.assessment.text)), limitsTable(this.known));
  }
}

// `strength` names the field that the rule scales, by the edit that would turn it.
function limitsTable({ text, limits, strength }) {
  if (limits.length === 0) return make("p", { class: "note" }, "Nothing can be tried: without a seismic rule there is no push.");
  const field = strength && strength.length > 0 ? fieldAt(strength[0].path, JSON.parse(text)) : null;
  return make("div", { class: "wide", tabindex: 0, role: "group", "aria-label": "How far it can go" },
    make("table", { class: "limits-table" },
      make("thead", {}, make("tr", {}, LIMIT_HEADS.map((head) => make("th", { scope: "col" }, head)))),
      ["bolted", "free"].filter((of) => limits.some((limit) => limit.of === of)).map((of) => make("tbody", { "data-limits": of },
        make("tr", { class: "part" }, make("th", { colspan: 4, scope: "rowgroup" }, OF_WORDS[of])),
        limits.filter((limit) => limit.of === of).map((limit) => limitRow(limit, field))))));
}

function limitRow(limit, field) {
  const at = (value, rounding) => (value === null || value === undefined ? "–" : shown(value, limit.kind, { rounding, digits: 4 }));
  const interval = limit.what === "zone" ? limit.zone || "–"
    : limit.ending === "bracketed" || limit.ending === "not_monotone" ? ["between ", at(limit.low, "down"), " and ", at(limit.high, "up")]
      : limit.ending === "holds_to_the_end" ? ["more than ", at(limit.low, "down")] : "–";
  return make("tr", { "data-limit": limit.of + " " + limit.what, "data-low": limit.low, "data-high": limit.high, "data-ending": limit.ending },
    make("th", { scope: "row" }, WHAT_WORDS[limit.what] || limit.what, limit.what === "demand" && field && [", ", textWithSymbols(field.label)]),
    make("td", { "data-label": LIMIT_HEADS[1] }, interval),
    make("td", { "data-label": LIMIT_HEADS[2] }, limit.what === "zone" ? "" : shown(limit.now, limit.kind)),
    make("td", { "data-label": LIMIT_HEADS[3] }, limit.governs ? checkTitle(limit.governs) : "", ENDING_WORDS[limit.ending] && make("span", { class: "note" }, " ", ENDING_WORDS[limit.ending])));
}
