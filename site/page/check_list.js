// The list of checks: each a row with its scale, its number and its word, opening to its own working.

const ROLES = ["required", "before-bolting", "information"];
const SOURCE_DELAY_MS = 200;

class CheckList {
  // `wanted` says which checks belong here; `heading` is the element name of the groups' headings, or null for none.
  constructor(wanted = () => true, heading = "h2") {
    this.wanted = wanted;
    this.heading = heading;
    this.opened = new Set();
    this.element = make("div", { class: "check-list" });
    this.tellSources = whenQuiet(SOURCE_DELAY_MS, () => this.element.isConnected && this.fillSources());
  }

  update(assessment, tree) {
    this.assessment = assessment;
    this.tree = tree;
    const { report } = assessment;
    if (report === null) return;
    keepingFocus(this.element, () => {
      fill(this.element, ROLES.map((role) => this.group(role, report.checks.filter((check) => check.role === role && this.wanted(check)))), trustLegend());
    });
    this.tellSources();
  }

  group(role, checks) {
    if (checks.length === 0) return null;
    const id = freshId("checks");
    const labelled = checks.find((check) => isCompared(check));
    return make("section", { class: "group", "aria-labelledby": this.heading && id, "data-role": role },
      this.heading && make(this.heading, { id }, ROLE_WORDS[role]),
      make("ul", { class: "checks" }, checks.map((check, place) => this.row(check, check === labelled, checks[place - 1]))));
  }

  // Zero and one are written once, at the first scale of a group; what is checked once, at its first check.
  row(check, labelled, before) {
    const key = check.id + " " + check.of;
    const open = this.opened.has(key);
    const compared = isCompared(check);
    const workingId = freshId("working");
    const [head, ...rest] = checkTitle(check.id).split(/(?<=: )/);
    const again = before && rest.length > 0 && checkTitle(before.id).startsWith(head);
    const button = make("button", {
      type: "button", class: "opener", "data-key": "check " + key, "aria-expanded": String(open), "aria-controls": open ? workingId : null,
      click: () => this.toggle(key),
    }, again ? make("span", { class: "unseen" }, head) : head, rest);
    return make("li", {
      class: "check-row " + check.status, "data-check": check.id, "data-of": check.of, "data-status": check.status, "data-role": check.role,
      "data-utilisation": compared ? check.utilisation : null,
    },
    make("div", { class: "row" },
      make("span", { class: "title" }, button),
      compared ? scaleDrawing(check, labelled) : make("span", { class: "no-scale" }),
      make("span", { class: "value" }, compared ? utilisationText(check) : "–"),
      make("span", { class: "outcome" }, make("b", { class: "word" }, STATUS_WORDS[check.status]), " ", make("span", { class: "occasion" }, check === this.assessment.governing && make("b", {}, "governs; "), spanText(check), this.beside(check))),
      make("span", { class: "source", "data-source": key })),
    open && make("div", { class: "opened", id: workingId }, this.workingOf(check, key)));
  }

  beside(check) {
    if (check.reason !== null && check.reason !== undefined) return textWithSymbols(wordsOf(check.reason));
    return textWithSymbols(occasionText(check.at, this.assessment.report, this.tree, { short: true }));
  }

  workingOf(check, key) {
    const place = placeOfCheck(check);
    const sections = this.assessment.working(place);
    const block = workingBlock(sections, { report: this.assessment.report, tree: this.tree, at: place });
    keepOpenSections(block, this.opened, key);
    return [isCompared(check) ? comparedText(check) : reasonText(check), block];
  }

  // Opens a check and, within its working, the step at an address; the check's own place where that step is not told there.
  showStep(check, address) {
    const key = check.id + " " + check.of;
    this.opened.add(key);
    this.update(this.assessment, this.tree);
    const row = [...this.element.querySelectorAll(".check-row")].find((one) => one.dataset.check === check.id && one.dataset.of === check.of);
    if (!row) return;
    const step = [...row.querySelectorAll("[data-at]")].find((one) => one.dataset.at === address);
    for (let around = step && step.parentElement; around && around !== row; around = around.parentElement) if (around.localName === "details") around.open = true;
    (step || row).scrollIntoView({ block: "center" });
    const opener = row.querySelector(".opener");
    if (step) {
      step.tabIndex = -1;
      step.focus({ preventScroll: true });
    } else opener.focus({ preventScroll: true });
  }

  toggle(key) {
    if (!this.opened.delete(key)) this.opened.add(key);
    this.update(this.assessment, this.tree);
  }

  // Clause and trust of the closed rows come from the workings, once nobody is waiting for the answer.
  fillSources() {
    if (this.assessment.report === null) return;
    const places = new Map([...this.element.querySelectorAll("[data-source]")].map((place) => [place.getAttribute("data-source"), place]));
    for (const check of this.assessment.report.checks) {
      const place = places.get(check.id + " " + check.of);
      if (place) fill(place, sourceOf(check, this.assessment));
    }
  }
}

// Where a check's working is told from; what depends on no load has no place of its own and is told from the first state.
function placeOfCheck(check) {
  return check.at || { ...placeOf(0), check: check.id };
}

function isCompared({ status }) {
  return status === "holds" || status === "fails";
}

function utilisationText({ utilisation }) {
  return utilisation === null ? "∞" : shown(utilisation, UTILISATION, { rounding: "up" });
}

// Both ends of what an unknown stiffness makes of it, where they print differently.
function spanText({ span }) {
  if (!span) return "";
  const [low, high] = span.map((utilisation) => shown(utilisation, UTILISATION, { rounding: "up" }));
  return low === high ? "" : low + " to " + high + "; ";
}

// What is demanded of what is allowed, or what is there and what is the least; where a load cannot be balanced at all
// there are no such numbers.
function comparedText(check) {
  const text = (value, rounding) => (value === null ? "–" : shown(value, check.kind, { rounding }));
  const isLeast = check.value !== null && check.limit !== null && (check.value > check.limit) === (check.status === "holds");
  return make("p", { class: "compared" },
    isLeast ? [text(check.value, "down"), ", at least ", text(check.limit, "up")] : [text(check.value, "up"), " of ", text(check.limit, "down")],
    spanText(check) !== "" && ". Anchors four times softer and four times stiffer, whose stiffness is not known, give both ends of the span.");
}

function reasonText(check) {
  if (check.reason === null) return null;
  const row = rowOf(check.reason);
  return make("p", { class: "compared" }, sentenceCase(STATUS_WORDS[check.status]), ": ", textWithSymbols(row.w), row.c && [" (", row.c, ")"], ".");
}

// The clause of the last step of a check's own section, and the least trust among that section's clauses.
function sourceOf(check, assessment) {
  const row = check.reason !== null && check.reason !== undefined ? rowOf(check.reason) : null;
  if (row !== null) return [trustMark(row.t), " ", row.c];
  const place = placeOfCheck(check);
  const own = ownSections(assessment.working(place), place);
  const rows = own.flatMap((section) => section.steps).filter((step) => !step.carried).map((step) => rowOf(step.id)).filter((step) => step.c !== "");
  const trust = leastTrust(rows.map((step) => step.t));
  const last = rows[rows.length - 1];
  return [trust && trustMark(trust), " ", last ? last.c : ""];
}

// The parts of a working that a reader has opened stay open when its numbers change.
function keepOpenSections(block, opened, key) {
  [...block.querySelectorAll("details")].forEach((details, place) => {
    const own = "section " + place + " " + key;
    details.open = opened.has(own);
    details.querySelector("summary").setAttribute("data-key", own);
    details.addEventListener("toggle", () => {
      if (details.open) opened.add(own);
      else opened.delete(own);
    });
  });
}
