// A sheet that is printed by itself from a chapter: title, fingerprint, cautions, and the studies of its worksheet.

const OWN_SHEETS = {
  "setting-out": { kicker: "Setting-out sheet", studies: ["setting-out", "as-built"], answer: true, signed: "Drilled by ____________________  Date ____________  Checked by ____________________" },
  "zone-statement": { kicker: "Zone statement", studies: ["zone-statement"], answer: true, signed: "Engineer ____________________  Signature ____________________  Date ____________" },
  "ask-the-owner": { kicker: "What to ask the owner of the floor", studies: [], block: ".owner-questions", answer: false, signed: "Answered by ____________________  For ____________________  Date ____________" },
};

class OwnSheet {
  constructor(host, name) {
    this.host = host;
    this.sheet = OWN_SHEETS[name];
    const paper = freshId("paper");
    this.size = make("select", { id: paper, change: () => choosePaper(this.size.value) },
      [["", "as the printer has it"], ["A4", "A4"], ["letter", "Letter"]].map(([value, label]) => make("option", { value }, label)));
    this.button = make("button", { type: "button", class: "tool", "data-key": "print sheet", click: () => this.print() }, "Print this sheet");
    this.paper = make("section", { class: "paper own" });
    this.element = make("div", { class: "own-sheet" }, make("p", { class: "tools" }, this.button, make("label", { for: paper }, " Paper "), this.size), this.paper);
  }

  update(assessment) {
    this.assessment = assessment;
    this.button.disabled = assessment.report === null;
  }

  bodies() {
    return this.sheet.studies.map((id) => this.host.shadowRoot.querySelector('[data-study="' + id + '"]')).filter(Boolean);
  }

  print() {
    if (this.bodies().some((study) => study.getAttribute("aria-busy") === "true")) {
      this.host.say("The sheet is still being worked out.");
      return;
    }
    this.ready();
    print();
  }

  // The sheet by itself, until the printer is done.
  ready() {
    this.make();
    const root = document.documentElement;
    root.dataset.printing = "sheet";
    this.host.toggleAttribute("data-printing", true);
    addEventListener("afterprint", () => {
      delete root.dataset.printing;
      this.host.toggleAttribute("data-printing", false);
      fill(this.paper);
    }, { once: true });
  }

  // Printing the page prints the sheet. Returns what ends that.
  listen() {
    const before = () => {
      const isShown = this.host.isConnected && !this.host.closest("[hidden]");
      if (isShown && this.assessment.report !== null && !this.host.hasAttribute("data-printing")) this.ready();
    };
    addEventListener("beforeprint", before);
    return () => removeEventListener("beforeprint", before);
  }

  make() {
    const { report } = this.assessment;
    const { block, answer, signed, kicker } = this.sheet;
    const { tree } = this.host.project();
    const title = typeof tree.title === "string" && tree.title !== "" ? tree.title : "Cabinet without a title";
    const copies = this.bodies().filter((study) => study.dataset.shown === "true").map((study) => {
      const copy = study.querySelector(".study-body").cloneNode(true);
      for (const button of copy.querySelectorAll("button, .study-working")) button.remove();
      return copy;
    });
    if (block) copies.push(this.host.shadowRoot.querySelector(block).cloneNode(true));
    this.paper.classList.toggle("one-page", Boolean(block));
    fill(this.paper,
      make("p", { class: "kicker" }, kicker), make("h1", {}, title), identityLines(report),
      make("div", { class: "paper-cautions" }, texts.cautions.map((caution) => make("p", { class: "caution", "data-caution": true }, caution))),
      answer && make("p", {}, paragraphsOf(report.answer).filter((paragraph) => paragraph.topic !== "governs").map((paragraph) => paragraphText(paragraph)).flatMap((text) => [text, " "])),
      copies,
      make("p", { class: "signed" }, signed));
  }
}
