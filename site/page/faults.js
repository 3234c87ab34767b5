// Everything that is wrong with the input, in one list that leads to the fields; and the faults of one field.

function faultsList(faults, { tree, show, remove, broken }) {
  if (broken) {
    return make("div", { class: "faults-list", role: "group", "aria-label": "Fault of the engine" },
      make("p", { class: "lead" }, "The engine has stopped on this input, which is a mistake in Steadfoot and not in the input. Save the project as a file and report it; undo brings back the last input that could be assessed."));
  }
  return make("div", { class: "faults-list", role: "group", "aria-label": "Faults of the input" },
    make("p", { class: "lead" }, "There is no answer yet: ", faultsCount(faults), "."),
    make("ul", {}, faults.map((fault) => make("li", { "data-fault": fault.path },
      make("button", { type: "button", class: "link", "data-key": "fault " + fault.path + " " + fault.problem, click: () => show(fault.path) }, faultSentence(fault, tree)),
      REMOVABLE.includes(fault.problem) && remove && [" ", make("button", { type: "button", class: "plain", click: () => remove(fault.path) }, "Take it away")]))));
}

// What is only not given yet is no fault of anybody.
function faultsCount(faults) {
  const [one, many] = faults.every((fault) => fault.problem === "missing") ? ["one value is still wanted", " values are still wanted"] : ["the input has one fault", " faults stand in the input"];
  return faults.length === 1 ? one : faults.length + many;
}

// Faults about something that the form has no field for; the reader can only take it away.
const REMOVABLE = ["unknown_key", "not_an_object", "not_a_list", "not_in_rule"];

function faultsWithin(faults, path) {
  return faults.filter((fault) => fault.path === path || (fault.path.startsWith(path) && /^[.[]/.test(fault.path.slice(path.length))));
}

// A fault in the words of the form: which field, what is wrong, what stands there, what would do.
function faultSentence(fault, tree) {
  const [, text] = /^"(.+)"$/.exec(fault.given) || [null, /^[-\d]/.test(fault.given) ? shownNumber(fault, tree) : ""];
  const given = text === "" || fault.problem === "missing" ? "" : " (here: " + text + ")";
  return [placeText(fault.path, tree), faultText(fault, fieldAt(fault.path, tree)) + given].filter(Boolean).join(": ");
}

// A number that was given, in the unit of its field, which is the one that its limits are told in.
function shownNumber(fault, tree) {
  const number = valueAt(tree, fault.path);
  const keys = keysOf(fault.path).filter((key) => key !== "between");
  // A place in a list of numbers has the field of the list.
  const end = keys.findLastIndex((key) => typeof key !== "number");
  const field = fieldsOf(pathOf(keys.slice(0, end)), tree).find((one) => one.key === keys[end]);
  return typeof number === "number" && field ? engineSays((engine) => engine.field_text(number, field.kind, unitSystem.now)) : fault.given;
}

// "tray 3, Mass" for contents[2].mass_kg.
function placeText(path, tree) {
  const words = [];
  let at = "";
  for (const key of keysOf(path)) {
    // An end of a range, or a word of a set, is told by its field.
    if (key === "between" || key === "one_of") break;
    const field = fieldsOf(at, tree).find((one) => one.key === key);
    at = within(at, key);
    const part = partAt(at);
    const item = valueAt(tree, at);
    const name = item && typeof item === "object" && typeof item.name === "string" ? item.name : "";
    if (typeof key === "number") words.push(part ? name || part.noun + " " + (key + 1) : "");
    else if (part) words.push(part.title);
    else if (partAt(at + "[]") && path === at) words.push(partAt(at + "[]").title);
    else words.push(field ? field.label : partAt(at + "[]") ? "" : key);
  }
  return words.filter(Boolean).slice(-2).join(", ");
}
