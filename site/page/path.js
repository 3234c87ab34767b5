// Paths of the project file as faults name them: `contents[2].mass_kg`, `states[0].drawn_out_mm["tray 1"]`.

function keysOf(path) {
  return [...path.matchAll(/\[("(?:[^"\\]|\\.)*")\]|\[(\d+)\]|([^.[\]]+)/g)].map(([, quoted, place, word]) => {
    if (quoted !== undefined) return JSON.parse(quoted);
    return place !== undefined ? Number(place) : word;
  });
}

function pathOf(keys) {
  return keys.reduce(within, "");
}

function within(path, key) {
  if (typeof key === "number") return path + "[" + key + "]";
  if (!/^[A-Za-z_][\w-]*$/.test(key)) return path + "[" + JSON.stringify(key) + "]";
  return path === "" ? key : path + "." + key;
}

function valueAt(tree, path) {
  let value = tree;
  for (const key of keysOf(path)) {
    if (value === null || typeof value !== "object" || !Object.hasOwn(value, key)) return undefined;
    value = value[key];
  }
  return value;
}

// A tree that differs in one place; what is not on the way to it is shared. `undefined` takes the key or the item away.
function withValue(tree, path, value) {
  return changed(tree, keysOf(path), value);
}

function changed(tree, [key, ...rest], value) {
  if (key === undefined) return value;
  const wanted = typeof key === "number" ? Array.isArray(tree) : tree !== null && typeof tree === "object" && !Array.isArray(tree);
  const copy = typeof key === "number" ? (wanted ? [...tree] : []) : wanted ? { ...tree } : {};
  const next = changed(Object.hasOwn(copy, key) ? copy[key] : undefined, rest, value);
  if (next !== undefined) copy[key] = next;
  else if (typeof key === "number") copy.splice(key, 1);
  else delete copy[key];
  return copy;
}
