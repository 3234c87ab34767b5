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

// "tray 3, Mass" for contents[2].mass_kg, "Contents, Mass" for contents[*].mass_kg, which means every one of them.
function placeText(path, tree) {
  const words = [];
  let at = "";
  let [item, ...keys] = [tree, ...keysOf(path)];
  while (keys.length > 0) {
    const key = keys.shift();
    // An end of a range, or a word of a set, is told by its field.
    if (key === "between" || key === "one_of") break;
    item = item && typeof item === "object" ? item[key] : undefined;
    const inside = at === "" ? key : at + "." + key;
    if (partAt(inside)) {
      words.push(partAt(inside).title);
      at = inside;
    } else if (partAt(inside + "[]")) {
      at = inside + "[]";
      const row = keys.shift();
      item = Array.isArray(item) ? item[row] : undefined;
      words.push(typeof row === "number" ? item && typeof item.name === "string" && item.name || partAt(at).noun + " " + (row + 1) : row === undefined || row === "*" ? partAt(at).title : row);
    } else {
      const field = fieldsOf(at, tree).find((one) => one.key === key);
      const [behind] = keys;
      const more = !field || behind === undefined || behind === "*" ? "" : typeof behind !== "number" ? behind : field.count ? axesOf(field)[behind] : "";
      words.push((field ? field.label : key) + (more ? " " + more : ""));
      break;
    }
  }
  return words.filter(Boolean).slice(-2).join(", ");
}

// What every place of a file that may hold a number is called, rows of a list together, for whoever has no tables.
function placeTexts(tree) {
  const all = {};
  const walk = (value, path) => {
    if (all[path] === undefined) all[path] = placeText(path, tree);
    if (value === null || typeof value !== "object") return;
    if (!Array.isArray(value)) all[path + "[*]"] = all[path];
    for (const [key, inside] of Object.entries(value)) {
      const isRow = Array.isArray(value) && inside !== null && typeof inside === "object";
      walk(inside, isRow ? path + "[*]" : within(path, Array.isArray(value) ? Number(key) : key));
    }
  };
  walk(tree, "");
  return all;
}
