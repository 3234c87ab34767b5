// Another file beside this one: in what they differ, which checks moved, and by which steps from the input to the result.
// Held against each other by the engine; the file stays on the page and goes nowhere.

const COMPARE_DELAY_MS = 300;
const CHANGE_WORDS = { value: "", added: "added", removed: "removed", renamed: "renamed", moved: "in another order" };
const ALONE_WORDS = {
  moves: "moves checks by itself", moves_nothing: "moves no check by itself",
  not_alone: "cannot stand by itself", not_tried: "not tried by itself",
};

class Comparison {
  // `open` shows a check of the list, and within it the step at an address.
  constructor(open) {
    this.open = open;
    this.other = null;
    this.problem = null;
    this.asked = null;
    this.input = make("input", { type: "file", accept: ".json,application/json", class: "unseen", tabindex: -1, "aria-label": "File to compare with",
      change: () => {
        this.bring(this.input.files[0]);
        this.input.value = "";
      } });
    this.tools = make("p", { class: "tools" });
    this.body = make("div", { class: "compared" });
    this.details = make("details", { "data-question": "compare", toggle: () => this.assessment && this.update(this.assessment) },
      make("summary", { "data-key": "question compare" }, make("h3", {}, "What changed since another file?")),
      make("p", { class: "help" }, "Open yesterday’s file, or drop it here. Told are the inputs that differ, the checks that moved, and for each the steps from where the input enters to its utilisation. Rows are known by their names and not by their places."),
      this.tools, this.body);
    this.element = make("section", { class: "comparison", "aria-label": "Compare with another file" }, this.details);
    this.details.addEventListener("drop", (event) => {
      const file = event.dataTransfer && event.dataTransfer.files[0];
      if (!file) return;
      event.preventDefault();
      event.stopPropagation();
      this.bring(file);
    });
    this.askLater = whenQuiet(COMPARE_DELAY_MS, () => this.ask());
    this.renderTools();
  }

  async bring(file) {
    if (!file) return;
    this.problem = null;
    if (file.size > FILE_BYTES_MAX) {
      this.other = null;
      this.problem = [file.name + ": " + texts.problems.too_long + ". A project file has at most 1 MB."];
    } else {
      this.other = { name: file.name, text: await file.text() };
    }
    this.details.open = true;
    this.asked = null;
    this.renderTools();
    this.ask();
  }

  takeAway() {
    this.other = null;
    this.problem = null;
    this.asked = null;
    this.renderTools();
    this.ask();
  }

  renderTools() {
    keepingFocus(this.tools, () => fill(this.tools,
      make("button", { type: "button", class: "plain", "data-key": "open compared", click: () => this.input.click() }, this.other ? "Open another file" : "Open a file to compare with"), this.input,
      this.other && [" ", make("span", { class: "record-name" }, this.other.name), " "],
      this.other && make("button", { type: "button", class: "plain", "data-key": "drop compared", click: () => this.takeAway() }, "Take it away")));
  }

  update(assessment) {
    this.assessment = assessment;
    if (assessment.report === null || this.other === null || !this.details.open) return;
    if (this.asked !== this.key()) this.askLater();
  }

  key() {
    return [this.assessment.text, this.assessment.system, this.other && this.other.text].join("\n");
  }

  ask() {
    this.asked = this.key();
    this.said = null;
    if (this.problem !== null) this.tellProblem(this.problem);
    else if (this.other === null) fill(this.body);
    else if (this.assessment.report === null) fill(this.body, make("p", { class: "note" }, "The project here has faults; mend them first."));
    else this.tell();
  }

  tell() {
    try {
      this.said = engineSays((engine) => engine.compare(this.other.text, this.assessment.text, usesOf));
    } catch (error) {
      console.error(error);
      this.tellProblem(["This could not be worked out."]);
      return;
    }
    if (this.said.faults) {
      this.tellProblem([this.other.name + " has faults and is not compared:", ...this.said.faults.map((fault) => fault.sentence)]);
      return;
    }
    fill(this.body, this.shown((check, address) => this.open(check, address)));
  }

  tellProblem(lines) {
    fill(this.body, make("div", { class: "told", role: "alert", "data-message": "faults" }, lines.map((line) => make("p", {}, line))));
  }

  // For the sheet on paper; nothing where nothing is compared.
  onPaper() {
    if (this.asked !== null && this.assessment.report !== null && this.other !== null && this.asked !== this.key()) this.ask();
    return this.said && this.said.compared ? [make("h2", {}, "Changes since ", this.other.name), this.shown(null)] : null;
  }

  shown(open) {
    const { sides, inputs, checks, unmoved } = this.said.compared;
    const side = (one, when) => [make("b", {}, VERDICT_WORDS[one.verdict]), " ", when, ", input ", make("span", { class: "fingerprint" }, one.fingerprint)];
    return [
      make("p", { class: "sides" }, side(sides[0], "in " + this.other.name), "; ", side(sides[1], "here"), "."),
      sides.some((one) => one.open > 0) && make("p", { class: "note" }, "Inputs are left open in one of them; its numbers stand for what stands in for those, and for nothing else."),
      inputs.length === 0 ? make("p", { class: "note" }, "The two inputs are the same.") : comparedInputs(inputs, [this.other.text, this.assessment.text].map((text) => JSON.parse(text))),
      checks.length === 0 ? make("p", { class: "note", "data-unmoved": unmoved }, "No check moved.") : comparedChecks(checks, unmoved, open, inputs),
    ];
  }
}

// Shape, symbol and symbols used of a row, for the engine, which does not carry the texts.
function usesOf(code) {
  const row = rowOf(code);
  return [row.h, row.s || "-", ...(row.y || [])].join(" ");
}

// What stands in the first file only has its rule there.
function comparedInputs(inputs, trees) {
  const heads = ["No.", "Input", "Before", "Now", "By itself"];
  return make("div", { class: "study-table" }, make("div", { class: "wide", tabindex: 0, role: "group", "aria-label": "Inputs that differ" },
    make("table", {}, make("caption", {}, "Inputs that differ"),
      make("thead", {}, make("tr", {}, heads.map((head) => make("th", { scope: "col" }, head)))),
      make("tbody", {}, inputs.map((input, place) => make("tr", { "data-input": input.path, "data-change": input.change, "data-alone": input.alone },
        make("td", { "data-label": heads[0] }, String(place + 1)),
        make("td", { "data-label": heads[1] }, textWithSymbols(placeText(input.path, trees[input.change === "removed" ? 0 : 1])), CHANGE_WORDS[input.change] && make("span", { class: "note" }, " ", CHANGE_WORDS[input.change])),
        make("td", { "data-label": heads[2] }, shortened(input.before)), make("td", { "data-label": heads[3] }, shortened(input.after)),
        make("td", { "data-label": heads[4] }, ALONE_WORDS[input.alone])))))));
}

const SHORT_LENGTH = 80;

function shortened(text) {
  if (text === null || text === undefined) return "–";
  const line = text.replace(/\s+/g, " ");
  return line.length > SHORT_LENGTH ? line.slice(0, SHORT_LENGTH) + "…" : line;
}

function comparedChecks(checks, unmoved, open) {
  return make("div", { class: "moved-checks", "data-unmoved": unmoved },
    make("h4", {}, checks.length === 1 ? "One check moved" : checks.length + " checks moved", ", ", String(unmoved), " came out the same to the last bit"),
    checks.map((check) => movedCheck(check, open)));
}

function movedCheck(check, open) {
  const came = (one) => (one === null || one === undefined ? "not told" : [isCompared(one) ? utilisationText(one) + " " : "", STATUS_WORDS[one.status]]);
  const alone = check.by.map((by) => "input " + (by.input + 1) + (by.utilisation === null || by.utilisation === undefined ? "" : " to " + shown(by.utilisation, UTILISATION, { rounding: "up" })));
  const head = [checkTitle(check.id), ": ", came(check.before), " → ", make("b", {}, came(check.after))];
  const body = [
    make("p", { class: "note" }, alone.length === 0 ? "No input moves it by itself." : ["Moved by itself by ", alone.join(", "), "."],
      check.before && check.after && JSON.stringify(check.before.at) !== JSON.stringify(check.after.at) && " It governs at another place of the sweep now, so what says where moved too."),
    make("ol", { class: "moved-steps" }, check.steps.map((step) => movedStep(check, step, open))),
  ];
  if (open === null) return make("section", { "data-moved": check.id }, make("h4", {}, head), body);
  return make("details", { "data-moved": check.id }, make("summary", { "data-key": "moved " + check.id }, head), body);
}

// A step from which no other in the list hangs is where an input enters; it says so in words.
function movedStep(check, step, open) {
  const row = rowOf(step.id);
  const value = (number) => (number === null || number === undefined ? "–" : shown(number, row.k, { from: step.system, to: step.system, reading: "base", rounding: roundingOf(row) }));
  const address = stepAddress({ part: step.part, of: step.of, check: step.check }, row);
  const enters = step.from.length === 0;
  return make("li", { class: enters ? "enters" : null, "data-at-moved": address, "data-before": step.before, "data-after": step.after, "data-from": step.from.map((place) => check.steps[place].id).join(" ") },
    enters && make("span", { class: "note" }, "enters here: "),
    math(indexedMarkup(row.s, step.index)), " ", textWithSymbols(row.w), ": ", value(step.before), " → ", value(step.after),
    step.count > 1 && make("span", { class: "note" }, " (of " + step.count + " the one that moved most)"),
    open && check.after && [" ", make("button", { type: "button", class: "plain", "data-key": "step " + check.id + " " + address, click: () => open(check.after, address) }, "to this step")]);
}
