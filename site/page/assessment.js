// What the engine says about a project. Nothing is computed or rounded outside the engine.

function engineSays(ask) {
  try {
    return ask(openEngine());
  } catch (error) {
    // An engine that broke down is not asked again; the next question goes to a fresh one. One that is not whole breaks
    // down where it would need what it has not.
    dropEngine();
    throw laterPart.isHere ? error : new LaterWanted();
  }
}

// One project's text in one system of units, with everything that was asked about it.
class Assessment {
  constructor(text, system) {
    this.text = text;
    this.system = system;
    this.known = new Map();
    this.report = null;
    this.faults = [];
    this.broken = false;
    try {
      const said = engineSays((engine) => engine.assess(text, system));
      if (said.report) this.report = said.report;
      else this.faults = said.faults;
    } catch (error) {
      if (error instanceof LaterWanted) throw error;
      this.broken = true;
      console.error(error);
    }
  }

  working(at) {
    return this.once("working " + JSON.stringify(at), (engine) => engine.working(this.text, JSON.stringify(at)) || []);
  }

  drawing(which, at, width) {
    const key = "drawing " + which + " " + width + " " + JSON.stringify(at);
    return this.once(key, (engine) => engine.drawings(this.text, this.system, JSON.stringify(at ?? (this.governing ? this.governing.at : null)), width, which));
  }

  once(key, ask) {
    if (!this.known.has(key)) this.known.set(key, engineSays(ask));
    return this.known.get(key);
  }

  get governing() {
    return this.report && this.report.governs !== null ? this.report.checks[this.report.governs] : null;
  }
}

// What a worksheet knows as long as the later part is wanted for its answer.
const NOT_ASSESSED = { text: null, report: null, faults: [], broken: false, governing: null, isWaiting: true };

// Told when a report was completed after it was given: what is not known is tried later.
const reportsChanged = new Listeners();

// The same question is asked by every worksheet on a page, so the last answers are kept.
const keptAssessments = [];

function assessed(text, system) {
  let found = keptAssessments.find((one) => one.text === text && one.system === system);
  if (!found) {
    found = new Assessment(text, system);
    keptAssessments.unshift(found);
    keptAssessments.length = Math.min(keptAssessments.length, 4);
  }
  return found;
}
