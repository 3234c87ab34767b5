// What was assessed: the states of the cabinet and the load cases of the rule, each opening to its working.

// A table whose rows open to the sections of one part of the pipeline.
class OpeningTable {
  constructor(part, heads) {
    this.part = part;
    this.heads = heads;
    this.opened = new Set();
    this.element = make("div", { class: "assessed", "data-assessed": part });
  }

  update(assessment, tree) {
    this.assessment = assessment;
    this.tree = tree;
    if (assessment.report === null) return;
    const rows = this.rows(assessment.report);
    keepingFocus(this.element, () => fill(this.element, rows.length === 0 ? make("p", { class: "note" }, this.nothing)
      : make("div", { class: "wide", tabindex: 0, role: "group", "aria-label": PART_WORDS[this.part] },
        make("table", { class: "assessed-table" },
          make("thead", {}, make("tr", {}, this.heads().map((head) => make("th", { scope: "col" }, head)))),
          rows.map((row) => this.body(row))))));
  }

  body({ name, cells, at, data }) {
    const open = this.opened.has(name);
    const id = freshId("working");
    const button = make("button", { type: "button", class: "opener", "aria-expanded": String(open), "aria-controls": open ? id : null, "data-key": "row " + name,
      click: () => {
        if (!this.opened.delete(name)) this.opened.add(name);
        this.update(this.assessment, this.tree);
      } }, textWithSymbols(name));
    return make("tbody", {},
      make("tr", data, make("th", { scope: "row" }, button), cells.map((cell, place) => make("td", { "data-label": this.heads()[place + 1] }, cell))),
      open && make("tr", { id, class: "opened" }, make("td", { colspan: cells.length + 1 }, this.workingOf(at))));
  }

  workingOf(at) {
    const sections = this.assessment.working(at).filter((section) => section.part === this.part);
    return workingBlock(sections, { open: true });
  }
}

function placeOf(state, load = null) {
  return { state, case: load, anchors: false, direction_rad: 0, subject: { kind: "whole", number: 0 }, stiffness: 1, check: null };
}

class StatesTable extends OpeningTable {
  constructor() {
    super("load-out", () => ["State", "Mass", "Aboard", "Centre of gravity, x", "Centre, y", "Centre, z"]);
  }

  rows(report) {
    return report.states.map((state, place) => ({
      name: state.name,
      cells: [shown(state.mass_kg, MASS), shown(state.aboard_kg, MASS), ...state.centre_mm.map((length) => shown(length, LENGTH))],
      at: placeOf(place),
      data: { "data-state": state.name, "data-mass-kg": state.mass_kg, "data-centre-mm": state.centre_mm.join(" ") },
    }));
  }
}

const LEVEL_WORDS = { component: "the cabinet itself", concrete: "concrete under the feet", anchorage: "anchors in concrete", amplified: "anchors in concrete, amplified" };
const DIRECTION_WORDS = { any: "every direction", hundred_thirty: "100 % with 30 %" };

class CasesTable extends OpeningTable {
  constructor() {
    super("demand", () => ["Load case", "Weight times", "Vertical, g", "Horizontal, g", "For", "Directions"]);
    this.nothing = "There are no load cases: no rule is chosen, or it does not reach this input.";
  }

  rows(report) {
    return report.cases.map((load, place) => ({
      name: wordsOf(load.name),
      cells: [shown(load.gravity, NUMBER), shown(load.vertical, NUMBER), shown(load.horizontal, NUMBER, { rounding: "up" }), LEVEL_WORDS[load.level] || load.level, DIRECTION_WORDS[load.directions] || load.directions],
      at: placeOf(this.heaviest(report), place),
      data: { "data-case": wordsOf(load.name), "data-horizontal": load.horizontal },
    }));
  }

  // The state for which the demand is told: the one that governs, or the first.
  heaviest(report) {
    const check = this.assessment.governing;
    return check && check.at ? check.at.state : 0;
  }
}
