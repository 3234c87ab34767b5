// Descriptions of the parts and fields of a project file, as the engine's own tables give them.

function partAt(path) {
  const pattern = path.replace(/\[\d+\]/g, "[]");
  return texts.parts.find((part) => part.path === pattern) || null;
}

function partOf(id) {
  return texts.parts.find((part) => part.id === id);
}

function rulesFor(part) {
  return part.rules === "demand" ? texts.rules.demand : texts.rules.anchor;
}

function chosenRule(part, tree) {
  const path = part.rules === "anchor-own" ? "anchorage" : part.path;
  const id = valueAt(tree, path + ".rule");
  return rulesFor(part).find((rule) => rule.id === id) || null;
}

function ruleField(part) {
  return {
    key: "rule", shape: "choice", absent: "fault", label: "Rule", clause: "",
    help: part.rules === "demand" ? "The published edition that says how hard the cabinet is pushed." : "The published edition that says how much the anchors carry.",
    words: rulesFor(part).map((rule) => rule.id), labels: rulesFor(part).map((rule) => rule.title),
  };
}

// The fields of the part that a path leads to, in their order.
function fieldsOf(path, tree) {
  const part = partAt(path);
  if (part === null) return [];
  const rule = part.rules === "none" ? null : chosenRule(part, tree);
  if (part.rules === "anchor-own") return [...part.fields, ...(rule ? ownFields(rule) : [])];
  return part.rules === "none" ? part.fields : [ruleField(part), ...(rule ? rule.fields : [])];
}

// What a single anchor may have otherwise than the anchorage says for all.
function ownFields(rule) {
  return (rule.anchor_fields || []).map((place) => ({ ...rule.fields[place], absent: "unknown", default: undefined, own: true }));
}

// The field at a path, or null: `cabinet.frame.mass_kg`, `site.s_ds`.
function fieldAt(path, tree) {
  const keys = keysOf(path);
  const key = keys.pop();
  return fieldsOf(pathOf(keys), tree).find((field) => field.key === key) || null;
}

const knownUnits = new Map();

// What a field measures, as a heading says it.
function unitOfField(field) {
  if (field.kind === undefined) return "";
  const key = field.kind + " " + unitSystem.now;
  if (!knownUnits.has(key)) {
    knownUnits.set(key, engineSays((engine) => engine.unit_text(field.kind, unitSystem.now, "field")));
  }
  return knownUnits.get(key);
}
