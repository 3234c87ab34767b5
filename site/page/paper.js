// The calculation sheet on paper: made when the page is printed, with every working opened.

let paperSheet = null;
const PAPER_DRAWING_WIDTHS = { plan: 240, elevation: 310, rose: 240 };

function choosePaper(size) {
  if (paperSheet === null) {
    paperSheet = new CSSStyleSheet();
    // The pages of another site are printed as that site has it.
    if (readersCabinet.follows) document.adoptedStyleSheets = [...document.adoptedStyleSheets, paperSheet];
  }
  paperSheet.replaceSync(size === "" ? "" : "@page{size:" + size + "}");
}

class CalculationSheet {
  constructor() {
    this.element = make("section", { class: "paper" });
  }

  // `limits` was computed for this very project.
  make(assessment, tree, limits, compared = null) {
    const { report, text } = assessment;
    const title = typeof tree.title === "string" && tree.title !== "" ? tree.title : "Cabinet without a title";
    fill(this.element,
      make("p", { class: "kicker" }, "Calculation sheet"),
      make("h1", {}, title),
      identityLines(report),
      make("div", { class: "paper-cautions" }, texts.cautions.map((caution) => make("p", { class: "caution", "data-caution": true }, caution))),
      make("p", { class: "signed" }, "Prepared by ____________________  Date ____________  Checked by ____________________"),
      report === null ? faultsOnPaper(assessment, tree) : reportOnPaper(assessment, tree, limits),
      compared,
      make("h2", {}, "The input"),
      make("p", { class: "note" }, "The whole input as a project file; saved as text, it opens in Steadfoot again. Lengths in mm, masses in kg, forces in N, stresses in MPa."),
      make("pre", { class: "input-text" }, projectFileText(JSON.parse(text))));
  }
}

function identityLines(report) {
  if (report === null) return make("p", { class: "identity" }, "Steadfoot engine ", texts.engine);
  const title = (rules, id) => (rules.find((rule) => rule.id === id) || { title: "none" }).title;
  return make("p", { class: "identity" },
    "Steadfoot engine ", report.engine, " · input ", make("span", { class: "fingerprint", "data-fingerprint": report.fingerprint }, report.fingerprint),
    make("br"), " Demand: ", title(texts.rules.demand, report.demand_rule),
    make("br"), " Anchors: ", title(texts.rules.anchor, report.anchor_rule));
}

function faultsOnPaper(assessment, tree) {
  return [make("h2", {}, "Faults of the input"), make("ul", {}, assessment.faults.map((fault) => make("li", {}, faultSentence(fault, tree))))];
}

function reportOnPaper(assessment, tree, limits) {
  const { report } = assessment;
  const list = new CheckList();
  list.update(assessment, tree);
  list.fillSources();
  const at = (assessment.governing && assessment.governing.at) || null;
  const [states, cases] = [new StatesTable(), new CasesTable()];
  states.update(assessment, tree);
  cases.update(assessment, tree);
  return [
    make("div", { class: "answer" }, paragraphsOf(report.answer).map((paragraph) => make("p", { "data-topic": paragraph.topic }, paragraphText(paragraph)))),
    report.unknown && openOnPaper(report.unknown, tree), standInNote(report, tree),
    make("div", { class: "side-by-side" }, Object.entries(PAPER_DRAWING_WIDTHS).map(([view, width]) => make("figure", { class: "figure " + view },
      drawingOf(assessment.drawing(view, at, width)), make("figcaption", {}, captionOf(view, report, at))))),
    list.element,
    make("h2", {}, "How far it can go"), limits.limits ? limitsTable(limits) : null,
    make("h2", {}, "What was assessed"), states.element, cases.element,
    absentLines(report),
    make("h2", {}, "Workings"), workingsOnPaper(assessment, tree),
  ];
}

function openOnPaper(unknown, tree) {
  return [make("h2", {}, "What is not known"),
    make("ul", { class: "open-inputs" }, unknown.inputs.map((input) => make("li", { "data-open": input.path }, textWithSymbols(placeText(input.path, tree)), ": ", mayBeText(input, tree)))),
    unknown.tried && triedLines(unknown, tree, null)];
}

function absentLines(report) {
  return report.absent.length === 0 ? null : make("ul", { class: "absent" }, report.absent.map((code) => make("li", {}, sentenceCase(wordsOf(code)), ".")));
}

// Sections that several results share are printed once, before the first result that needs them.
function workingsOnPaper(assessment, tree) {
  const printed = new Set();
  return assessment.report.checks.map((check) => {
    const place = placeOfCheck(check);
    const sections = assessment.working(place).filter((section) => {
      const key = JSON.stringify(section);
      return printed.has(key) ? false : printed.add(key);
    });
    return make("section", { class: "worked" },
      make("h3", {}, checkTitle(check.id), " · ", STATUS_WORDS[check.status]),
      sections.length === 0 ? make("p", { class: "note" }, "Worked out above.")
        : workingBlock(sections, { open: true, report: assessment.report, tree, at: place }));
  });
}
