// What to do next with an answer: what is still to be given, what a rule misses, where to look for what would hold.

// Without these there is no whole answer.
const MAIN_PARTS = { foot: "the feet", slab: "the slab", site: "the site with its seismic rule", anchor: "the anchors", anchorage: "their kind and rule" };
// Questions that look for a remedy, by the checks that fail.
const REMEDIES = [
  [/^anchor\./, ["what-would-hold", "what-matters", "how-far"]],
  [/^(free|base)\./, ["standing-free", "what-to-move-down", "ways-of-standing"]],
  [/^frame\./, ["sway", "how-far"]],
  [/^lift\./, ["hook"]],
  [/./, ["how-far"]],
];

class NextSteps {
  // `host` brings the reader to a place of the input, and opens a question.
  constructor(host) {
    this.host = host;
    this.element = make("ul", { class: "next-steps", "aria-label": "What to do next", hidden: true });
  }

  update({ report }, tree) {
    const lines = report === null ? [] : [
      this.line("Still to give: ", partsToGive(tree).map((part) => this.step("to " + part.id, MAIN_PARTS[part.id], () => this.host.show(part.path.replace("[]", ""))))),
      this.line("Not covered until it is given: ", fieldsWanted(report, tree).map(({ path, label }) => this.step("want " + path, textWithSymbols(label), () => this.host.show(path)))),
      this.line("About what fails: ", remediesOf(report, tree).map(({ id, title }) => this.step("ask " + id, title, () => this.host.ask(id)))),
    ].filter(Boolean);
    this.element.hidden = lines.length === 0;
    keepingFocus(this.element, () => fill(this.element, lines));
  }

  line(words, steps) {
    return steps.length > 0 && make("li", {}, words, steps.map((step, place) => [place > 0 && " · ", step]));
  }

  step(key, label, click) {
    return make("button", { type: "button", class: "link", "data-key": key, click }, label);
  }
}

function partsToGive(tree) {
  return Object.keys(MAIN_PARTS).map(partOf).filter((part) => {
    const value = valueAt(tree, part.path.replace("[]", ""));
    return part.presence === "list" ? !Array.isArray(value) || value.length === 0 : value === undefined;
  });
}

function remediesOf(report, tree) {
  const missing = partsToGive(tree).map((part) => part.id);
  // Without feet anything tips.
  if (missing.includes("foot")) return [];
  const stands = missing.includes("anchor");
  const failing = report.checks.filter((check) => check.status === "fails" && (check.role === "required" || (stands && check.role === "before-bolting")));
  const ids = new Set(failing.flatMap((check) => REMEDIES.find(([pattern]) => pattern.test(check.id))[1]));
  return [...ids].map((id) => texts.studies.find((study) => study.id === id));
}

// Each field that a check which decides waits for, once.
function fieldsWanted(report, tree) {
  const reasons = new Set(report.checks.filter((check) => check.status === "not_covered" && check.role !== "information").map((check) => check.reason));
  const wanted = new Map([...reasons].map((code) => fieldWanted(code, tree)).filter(Boolean).map((found) => [found.path, found]));
  return [...wanted.values()];
}

// The empty field that a reason speaks of: by its key, by its symbol, or by its label.
function fieldWanted(code, tree) {
  const { w: words, c: clause } = rowOf(code);
  if (!/missing|not given|^no .* (is|are) given/.test(words)) return null;
  const empty = texts.parts.filter((part) => part.presence !== "list" && valueAt(tree, part.path) !== undefined)
    .flatMap((part) => fieldsOf(part.path, tree).map((field) => ({ path: within(part.path, field.key), label: field.label, key: field.key })))
    .filter(({ path }) => valueAt(tree, path) === undefined);
  const keys = words.match(/[a-z][a-z0-9]*(_[a-z0-9]+)+/g) || [];
  const signs = symbolsIn(words);
  const likely = empty.filter(({ key }) => /_un?cr/.test(key) === words.includes("uncracked"));
  // Keys such as yield_mpa stand in several parts: the reason says of which it speaks.
  const own = empty.filter(({ path }) => clause.startsWith("input: ") && path.startsWith(clause.slice(7) + "."));
  const all = [...own, ...likely, ...empty];
  return all.find(({ key }) => keys.includes(key))
    || all.find(({ label }) => symbolsIn(label).some((sign) => signs.includes(sign)))
    || all.find(({ label }) => symbolsIn(label).some((sign) => signs.some((start) => sign.startsWith(start + "_"))))
    || all.find(({ label }) => label.length > 6 && words.toLowerCase().includes(label.toLowerCase()))
    || null;
}

// N_p,eq and N_p_eq are one symbol.
function symbolsIn(words) {
  return (words.match(/\w+_\w+(,\w+)*/g) || []).map((sign) => sign.replaceAll(",", "_").toLowerCase());
}

// The answer as text, to be pasted into a letter: what was checked, by which input, and the cautions.
function answerAsText({ report }, tree) {
  const checks = report.checks.filter((check) => check.role === "required").map((check) => "- " + checkTitle(check.id) + ": "
    + (isCompared(check) ? utilisationText(check) + " " : "") + STATUS_WORDS[check.status]
    + (check.reason === null || check.reason === undefined ? "" : ", " + wordsOf(check.reason)));
  return [tree.title, answerText(report.answer), ...checks, "Steadfoot " + texts.engine + ", input " + report.fingerprint, ...texts.cautions].filter(Boolean).join("\n") + "\n";
}

// Puts a text where it can be pasted; a page that has no right to the clipboard lets the browser copy what is selected.
async function copied(text) {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    const area = make("textarea", { class: "unseen", "aria-hidden": "true" });
    area.value = text;
    document.body.append(area);
    area.select();
    const done = document.execCommand("copy");
    area.remove();
    return done;
  }
}
